import { Suspense, useState } from 'react'
import type { Demand, LoadCase } from '../../../core/model/result.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { EstimateMark } from './EstimateMark.tsx'
import { lazyPage } from '../../lazyPage.tsx'

const WorkPad = lazyPage(
  () => import('./WorkPad.tsx').then((module) => module.WorkPad),
  ['answers', 'glossary', 'loadPath', 'reasons', 'terms'],
)

const caseWords = ({ wind, figure, inside, post }: LoadCase): string => {
  const said = wordsOf('loads')
  return [said.wind[wind], said.figure[figure], ...(inside === null ? [] : [said.inside[inside]]), said.post[post]].join(', ')
}

const combinationWords = (id: string): string => {
  const said = wordsOf('loads')
  return Object.hasOwn(said.combinations, id) ? said.combinations[id as keyof Words['loads']['combinations']] : id
}
const noteWords = (id: string): string => {
  const said = wordsOf('loads')
  return Object.hasOwn(said.notes, id) ? said.notes[id as keyof Words['loads']['notes']] : id
}

const Work = ({ demand }: { demand: Demand }) => {
  const [open, setOpen] = useState(false)
  const governing = demand.cases.find((one) => one.id === demand.governing.uplift?.case)
  return (
    <details className='row' onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className='row-name'>{wordsOf('loadPath').demandPart.work}</span>
      </summary>
      {open && (
        <div className='pad'>
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
        <EstimateMark shown /> {words.standing}
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
                      <span className='case-governs'>
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
      <ul className='bullets'>
        {demand.notes.map((note) => (
          <li key={note}>{noteWords(note)}</li>
        ))}
        <li>{wordsOf('loadPath').noSeismic}</li>
      </ul>
    </>
  )
}
