import { Suspense, useState } from 'react'
import type { Demand } from '../../../core/model/result.ts'
import { caseWords, combinationWords, loadNotes } from '../../../facts/loadWords.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { Bullets } from '../../kit/Lists.tsx'
import { EstimateMark } from '../../kit/Mark.tsx'
import { lazyPage } from '../../lazyPage.tsx'

const WorkPad = lazyPage(
  () => import('./WorkPad.tsx').then((module) => module.WorkPad),
  ['answers', 'glossary', 'loadPath', 'reasons', 'terms'],
)

const Work = ({ demand }: { demand: Demand }) => {
  const [open, setOpen] = useState(false)
  const governing = demand.cases.find((one) => one.id === demand.governing.uplift?.case)
  return (
    <details className='row over-fine' onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className='opens'>
        <span className='row-name grows'>{wordsOf('loadPath').demandPart.work}</span>
      </summary>
      {open && (
        <div className='pad stack small'>
          <Suspense>
            <WorkPad
              steps={[...demand.worked, ...(governing?.worked ?? []), ...(demand.uplift ? [demand.uplift] : [])]}
              result={demand.uplift}
            />
          </Suspense>
        </div>
      )}
    </details>
  )
}

/** Where an estimated uplift comes from: every wind case tried at each post, the one that governs, and what the estimate leaves out. */
export const DemandPart = ({ demand }: { demand: Demand }) => {
  const words = wordsOf('loadPath').demandPart
  const { say } = useUnits()
  const { uplift } = demand.governing
  return (
    <>
      <p className='quiet'>
        <EstimateMark /> {words.standing}
      </p>
      {demand.cases.length > 0 && (
        <table className='grid'>
          <thead>
            <tr>
              <th scope='col'>{words.windCase}</th>
              <th scope='col'>{words.up}</th>
            </tr>
          </thead>
          <tbody>
            {demand.cases.map((one) => {
              const governs = one.id === uplift?.case
              return (
                <tr key={one.id} data-chosen={governs || undefined}>
                  <th scope='row'>
                    {caseWords(one)}
                    {governs && (
                      <span className='block heavy'>
                        {wordsOf('app').answers.governs}: {combinationWords(one.uplift.combination)}
                      </span>
                    )}
                  </th>
                  <td className='number'>{one.uplift.load > 0 ? say(one.uplift.load, 'force') : words.none}</td>
                </tr>
              )
            })}
          </tbody>
        </table>
      )}
      {demand.uplift && <Work demand={demand} />}
      <Bullets of={[...loadNotes(demand.notes), wordsOf('loadPath').noSeismic]} />
    </>
  )
}
