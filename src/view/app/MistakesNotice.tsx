import { putRight } from '../../state/actions/view.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { Button } from '../kit/Controls.tsx'

/** What is shown as done wrong, and the way back. */
export const MistakesNotice = () => {
  const build = wordsOf('build')
  const mistakes = usePier((state) => state.view.mistakes)
  return (
    <div className='notice panel'>
      <p>
        <strong>{build.notice.title}</strong> {mistakes.map((id) => build.mistakes[id].name).join(', ')}. {build.notice.why}
      </p>
      <div className='line'>
        <Button onClick={() => putRight(pierStore)}>{build.notice.putRight}</Button>
      </div>
    </div>
  )
}
