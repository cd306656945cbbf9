import { Fragment, type ReactNode, Suspense, useId, useState } from 'react'
import type { Fact, FactGroup } from '../../../core/model/fact.ts'
import { factsOf } from '../../../core/derive/report/report.ts'
import { rowIn } from '../../../facts/firstWords.ts'
import { type SaidFact, said } from '../../../facts/said.ts'
import { wordsOf } from '../../../words/index.ts'
import { useFacts, useUnits } from '../../hooks/usePier.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { FactLine, FactTable, GroupLine } from '../../kit/FactTable.tsx'
import { Button } from '../../kit/Controls.tsx'
import { Mark, EstimateMark } from '../../kit/Mark.tsx'
import { lazyPage } from '../../lazyPage.tsx'
import './heldFacts.css'

const FactPad = lazyPage(
  () => import('../loadPath/FactPad.tsx').then((module) => module.FactPad),
  ['answers', 'drawing', 'glossary', 'loadPath', 'materials', 'reasons', 'terms', 'verifiable'],
)

type LineProps = Readonly<{
  fact: Fact
  /** What stands in the last column. */
  last: 'ratio' | 'difference'
  under?: (told: SaidFact) => ReactNode
  /** A row of its own, always in view. */
  says?: (told: SaidFact) => ReactNode
  isOpenAtFirst?: boolean
  /** Does its part stay marked in the picture while the line is open? */
  keepsPart?: boolean
  /** What the line opens. */
  children: ReactNode
}>

/** A fact that is held against something: what is asked, what is there, and how far apart they are. Its head opens the rest. */
export const HeldFact = ({ fact, last, under, says, isOpenAtFirst = false, keepsPart = false, children }: LineProps) => {
  const id = useId()
  const [chosen, setChosen] = useState<boolean | null>(null)
  const open = chosen ?? isOpenAtFirst
  const pointing = usePointing(fact.drawn, open && keepsPart)
  const told = said(fact, useUnits())
  const head = (
    <Button className='fact-head lines' aria-expanded={open} aria-controls={id} onClick={() => setChosen(!open)}>
      {told.mark && <Mark name={told.mark} />}
      <span>
        {told.name}
        {under?.(told)}
      </span>
    </Button>
  )
  return (
    <FactLine
      className='row over-fine fact'
      data-verdict={fact.verdict ?? undefined}
      name={head}
      cells={[told.limit, told.value, told[last]]}
      {...pointing}
    >
      {says && (
        <tr>
          <td colSpan={4} className='fact-says'>
            {says(told)}
          </td>
        </tr>
      )}
      <tr hidden={!open} className='fact-more'>
        <td colSpan={4} id={id}>
          {open && children}
        </td>
      </tr>
    </FactLine>
  )
}

/** Checks of these groups, each group under its name, each check with its verdict and its work. */
export const CheckTable = ({ groups }: Readonly<{ groups: readonly FactGroup[] }>) => {
  const facts = useFacts()
  const words = wordsOf('app').answers
  const says = (fact: Fact) => (told: SaidFact) => (
    <>
      <span className={`strong mark-${told.mark}`}>{told.word}.</span> <EstimateMark shown={fact.isEstimate} /> {told.plain}
    </>
  )
  return (
    <FactTable className='facts small checks' heads={[words.check, words.asked, words.there, words.ratio]}>
      {groups.map((group) => {
        const own = factsOf(facts, group)
        const name = rowIn<string>(words.groups, group)
        return (
          own.length > 0 && (
            <Fragment key={group}>
              {name && (
                <GroupLine className='facts-group' span={4}>
                  {name}
                </GroupLine>
              )}
              {own.map((fact) => (
                <HeldFact key={fact.id} fact={fact} last='ratio' says={says(fact)} keepsPart>
                  <Suspense>
                    <FactPad fact={fact} />
                  </Suspense>
                </HeldFact>
              ))}
            </Fragment>
          )
        )
      })}
    </FactTable>
  )
}
