import { text } from '../../../text/index.ts'

/** Stands beside every number that rests on an estimate of the loads. */
export const EstimateMark = ({ shown }: { shown: boolean }) => (shown ? <span className='estimate-mark'>{text.app.loads.mark}</span> : null)
