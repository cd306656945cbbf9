import { wordsOf } from '../../../words/index.ts'

/** Stands beside every number that rests on an estimate of the loads. */
export const EstimateMark = ({ shown }: { shown: boolean }) =>
  shown ? <span className='estimate-mark'>{wordsOf('app').loads.mark}</span> : null
