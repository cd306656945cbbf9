import { wordsOf } from '../../words/index.ts'
import { Mark } from '../kit/Mark.tsx'
import { useShelf } from './useShelf.ts'

/** Another tab saved or deleted this pier. Every way on keeps both. */
export const Conflict = ({ gone, id }: { gone: boolean; id: string }) => {
  const words = wordsOf('shelf')
  const shelf = useShelf()
  return (
    <div className='shelf-note' role='alert'>
      <h4>
        <Mark name='warning' /> {words.conflict.title}
      </h4>
      <p>{gone ? words.conflict.gone : words.conflict.changed}</p>
      <div className='shelf-choices'>
        <button type='button' className='button' onClick={() => void shelf.saveAsNew()}>
          {words.conflict.mineNew}
        </button>
        {!gone && (
          <>
            <button type='button' className='button' onClick={() => void shelf.saveOverTheirs()}>
              {words.conflict.mineOver}
            </button>
            <span className='quiet'>{words.conflict.mineOverHelp}</span>
            <button type='button' className='button' onClick={() => void shelf.openPier(id)}>
              {words.conflict.theirs}
            </button>
            <span className='quiet'>{words.conflict.theirsHelp}</span>
          </>
        )}
        <button type='button' className='button plain' onClick={shelf.leaveConflict}>
          {words.conflict.later}
        </button>
      </div>
    </div>
  )
}
