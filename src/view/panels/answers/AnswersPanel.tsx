import '../../kit/parts.css'
import './answers.css'
import { type ReactNode, Suspense, useState } from 'react'
import { wordsOf } from '../../../words/index.ts'
import { useFacts, usePier, useResult, useUnits } from '../../hooks/usePier.ts'
import { issueText } from '../../../facts/issueWords.ts'
import { LoadPath } from '../loadPath/LoadPath.tsx'
import { Mark, MarkedWord } from '../../kit/Mark.tsx'
import { Folded, SureSection, YearsSections } from './LateSections.tsx'
import { otherGroups, type VerdictMark } from '../../../core/model/fact.ts'
import { depthPairs } from '../../../facts/said.ts'
import { Pairs } from '../../kit/FactTable.tsx'
import { MethodNotes } from './MethodNotes.tsx'
import { CheckTable } from './HeldFacts.tsx'
import { Quantities } from './Quantities.tsx'
import { WoodAndWater } from './WoodAndWater.tsx'
import { lazyPage } from '../../lazyPage.tsx'
import { standingsInOrder } from '../../../core/model/worked.ts'

/** Every mark with its meaning, so that no fact hides behind a mark. */
const MarkLegend = () => {
  const { verdicts, verdictMeanings } = wordsOf('app')
  const meanings = Object.entries(verdictMeanings) as [keyof typeof verdictMeanings & VerdictMark, string][]
  return (
    <Pairs
      as='marks'
      of={[
        ...meanings.map(([mark, meaning]) => [<MarkedWord key={mark} name={mark} word={verdicts[mark]} />, meaning] as const),
        ...standingsInOrder.flatMap((standing) => {
          const { mark, meaning } = wordsOf('standings')[standing]
          const name = (
            <>
              <span aria-hidden='true'>†</span> {mark}
            </>
          )
          return mark === null ? [] : [[name, meaning] as const]
        }),
      ]}
    />
  )
}

const AgainstDrawing = lazyPage(
  () => import('../drawing/AgainstDrawing.tsx').then((module) => module.AgainstDrawing),
  ['answers', 'drawing', 'materials', 'reasons'],
)

const Section = ({ title, help, children }: { title: string; help: string; children: ReactNode }) => (
  <section className='answer under-fine'>
    <h3>{title}</h3>
    <p className='answer-help quiet'>{help}</p>
    {children}
  </section>
)

/** The licenses of all that the built page carries; the build has written them beside it. */
const Credits = () => {
  const { sections, creditsAway } = wordsOf('app').answers
  const [text, setText] = useState<string | null>(null)
  const read = async () => {
    const answer = await fetch(new URL('licenses.txt', document.baseURI)).catch(() => null)
    setText(answer?.ok ? await answer.text() : creditsAway)
  }
  return (
    <Folded {...sections.credits} onOpen={(isOpen) => isOpen && void read()}>
      <pre className='credits small broken-anywhere' translate='no'>
        {text}
      </pre>
    </Folded>
  )
}

/** What this pier should be asked about, first of all answers. */
const IssueList = () => {
  const { issues } = useResult()
  const system = usePier((state) => state.view.units)
  if (issues.length === 0) return null
  return (
    <Section title={wordsOf('app').answers.sections.issues.title} help={wordsOf('app').answers.sections.issues.help}>
      <ul className='stack small'>
        {issues.map((issue) => (
          <li key={issue.code + issue.path} className='problem'>
            <Mark name='warning' />
            <span>{issueText(issue, system)}</span>
          </li>
        ))}
      </ul>
    </Section>
  )
}

/** Depth of what bears, at the three places that rules measure from. */
const Depths = () => {
  const pairs = depthPairs(useFacts(), useUnits())
  const { depthLevel, depthNote } = wordsOf('app').answers
  return (
    <>
      <Pairs of={pairs} />
      <p className='quiet'>{pairs.length === 1 ? depthLevel : depthNote}</p>
    </>
  )
}

/** The answers below the title block: each can be opened down to its formula and its source. */
export const AnswersPanel = () => {
  const { sections } = wordsOf('app').answers
  return (
    <section className='answers scrolls' id='answers' aria-label={wordsOf('app').panels.answers} tabIndex={-1}>
      <h2 className='spoken'>{wordsOf('app').panels.answers}</h2>
      <Section title={wordsOf('loadPath').title} help={wordsOf('loadPath').help}>
        <LoadPath />
      </Section>
      <SureSection />
      <Section {...sections.quantities}>
        <Quantities />
      </Section>
      <Section {...sections.wood}>
        <WoodAndWater />
      </Section>
      <YearsSections />
      <Section {...sections.depths}>
        <Depths />
      </Section>
      <Section {...sections.checks}>
        <CheckTable groups={otherGroups} />
      </Section>
      <Section title={wordsOf('drawing').title} help={wordsOf('drawing').help}>
        <Suspense>
          <AgainstDrawing />
        </Suspense>
      </Section>
      <IssueList />
      <Section {...sections.method}>
        <MethodNotes />
      </Section>
      <Folded {...sections.marks}>
        <MarkLegend />
      </Folded>
      <Folded {...sections.words}>
        <Pairs as='marks' of={Object.values(wordsOf('glossary')).map(({ word, means }) => [word, means] as const)} />
      </Folded>
      <Credits />
    </section>
  )
}
