import { lazy, Suspense, useState } from 'react'
import type { Demand, LoadCase } from '../../../core/model/result.ts'
import { text } from '../../../text/index.ts'
import { late } from '../../../text/late.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { EstimateMark } from './EstimateMark.tsx'

const WorkPad = lazy(() => import('./WorkPad.tsx').then((module) => ({ default: module.WorkPad })))

const words = late.loadPath.demandPart
const said = late.loads

const caseWords = ({ wind, figure, inside, post }: LoadCase): string =>
  [said.wind[wind], said.figure[figure], ...(inside === null ? [] : [said.inside[inside]]), said.post[post]].join(', ')

const combinationWords = (id: string): string =>
  Object.hasOwn(said.combinations, id) ? said.combinations[id as keyof typeof said.combinations] : id
const noteWords = (id: string): string => (Object.hasOwn(said.notes, id) ? said.notes[id as keyof typeof said.notes] : id)

const Work = ({ demand }: { demand: Demand }) => {
  const [open, setOpen] = useState(false)
  const governing = demand.cases.find((one) => one.id === demand.governing.uplift?.case)
  return (
    <details className='row' onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className='row-name'>{words.work}</span>
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
                        {text.app.answers.governs}: {combinationWords(one.uplift.combination)}
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
        <li>{late.loadPath.noSeismic}</li>
      </ul>
    </>
  )
}
