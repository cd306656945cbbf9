import type { ReactNode } from 'react'
import { pullPath, holdsOf, isNeeded, linksOf } from '../../../core/derive/report/pullPath.ts'
import type { FactGroup } from '../../../core/model/fact.ts'
import type { PierResult } from '../../../core/model/result.ts'
import type { Role } from '../../../core/model/solid.ts'
import { wordsOf } from '../../../words/index.ts'
import { factsAbout } from '../../../state/derived.ts'
import { usePier, useResult } from '../../hooks/usePier.ts'
import { Axis } from './Axis.tsx'
import { BarPatterns } from './LinkBar.tsx'
import { ChainSummary, ChartKey } from './ChainSummary.tsx'
import { ChartLinkRow } from './ChartLinkRow.tsx'
import { chartScale } from './chartScale.ts'
import { DemandPart } from './DemandPart.tsx'
import { RaiseUplift } from './RaiseUplift.tsx'
import { GivenReason, SoilWays } from './SoilWays.tsx'
import { WhatChanges } from './WhatChanges.tsx'
import './chart.css'
import './loadPath.css'

const fixedRole: Partial<Readonly<Record<FactGroup, Role>>> = {
  'uplift-post': 'wood',
  'uplift-connection': 'bar',
  'uplift-soil': 'soil',
}

/** What a group's strip is made of: as in the cutaway. */
const roleOf = (group: FactGroup, parts: readonly string[], { zones }: PierResult): Role =>
  fixedRole[group] ?? zones.find((zone) => zone.id === parts[0])?.role ?? 'concrete'

const Part = ({ title, help, children }: { title: string; help: string; children: ReactNode }) => (
  <section className='path-part over-fine'>
    <h4 className='flat lead heavy'>{title}</h4>
    <p className='answer-help quiet'>{help}</p>
    {children}
  </section>
)

/** The load path: what pulls, every link from the post down into the ground on one scale, and what would change it. */
export const LoadPath = () => {
  const words = wordsOf('loadPath')
  const result = useResult()
  const system = usePier((state) => state.view.units)
  const chain = pullPath(factsAbout(result))
  const scale = chartScale(
    linksOf(chain).flatMap((link) => (isNeeded(link) ? (holdsOf(link) ?? []) : [])),
    chain.asked,
    system,
  )
  const judged = result.spec.judgement?.mechanism === result.uplift.soil ? result.uplift.soil : null
  return (
    <>
      <ChainSummary chain={chain} />
      <ChartKey chain={chain} />
      <BarPatterns />
      <div className='chart'>
        <Axis scale={scale} chain={chain} />
        <ol className='chart-groups' aria-label={words.chart}>
          {chain.groups.map(({ group, links }) => (
            <li key={group} className='chart-group holds'>
              <span className={`chart-strip role-${roleOf(group, links[0]?.drawn ?? [], result)}`} aria-hidden='true' />
              <h4 className='flat'>{wordsOf('app').answers.groups[group]}</h4>
              <ul>
                {links.map((link) => (
                  <ChartLinkRow key={link.id} link={link} scale={scale} chain={chain} judged={judged} />
                ))}
              </ul>
            </li>
          ))}
        </ol>
      </div>
      <section className='path-raise'>
        <h4 className='flat'>{words.raise.title}</h4>
        <RaiseUplift chain={chain} />
      </section>
      <GivenReason inUse={result.uplift.soil} />
      <p className='quiet'>{words.neverTwice}</p>
      {result.demand.isEstimate && (
        <Part title={words.demandPart.title} help={words.demandPart.help}>
          <DemandPart demand={result.demand} />
        </Part>
      )}
      <Part title={words.changes.title} help={words.changes.help}>
        <WhatChanges chain={chain} />
      </Part>
      <Part title={words.soil.title} help={words.soil.help}>
        <SoilWays chain={chain} />
      </Part>
    </>
  )
}
