import { late } from '../../../text/late.ts'

/** Stands beside every number that rests on an estimate of the loads. */
export const EstimateMark = ({ shown }: { shown: boolean }) =>
  shown ? <span className='estimate-mark'>{late.loadPath.estimateMark}</span> : null
