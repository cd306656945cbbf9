import { postSections } from '../engineering/tables/postSections.ts'
import { cover } from '../engineering/tables/concrete.ts'
import type { Callout, Hole, PierSpec, Site, ThroughBars } from '../model/spec.ts'
import { metres } from '../units/quantity.ts'
import { toSI } from '../units/factors.ts'
import { calloutFields } from './pier/callout.ts'
import { throughBarFields } from './pier/steel.ts'

const inch = toSI(1, 'in')
/** Down to a whole inch, so that a part starts with a size that can be bought or dug. */
const wholeInches = (value: number, least: number) => metres(toSI(Math.max(Math.floor(value / inch + 1e-6), least), 'in'))
const within = (value: number, least: number, most: number) => Math.max(least, Math.min(most, value))

const bell = ({ hole }: PierSpec): Hole['bell'] => ({
  diameter: wholeInches(within(1.5 * hole.diameter, hole.diameter + 2 * inch, 72 * inch), 9),
  height: wholeInches(within(hole.depth / 4, 2 * inch, 12 * inch), 2),
})

const flare = ({ hole, site }: PierSpec): Hole['flare'] => {
  const diameter = hole.diameter + 4 * inch
  const steep = Math.max(hole.depth / 5, site.slope * (hole.diameter / 2) + 2 * inch, 3 * site.slope * 2 * inch + inch)
  return { diameter: wholeInches(diameter, 9), depth: wholeInches(steep, 2) }
}

const lower = ({ site, hole }: PierSpec): Site['lower'] => ({
  from: wholeInches(within(hole.depth / 2, site.topsoil + 6 * inch, 144 * inch), 6),
  soil: { kind: 'presumptive', class: 'clay' },
})

const bars = ({ hole, post }: PierSpec): ThroughBars => {
  const section = postSections[post.section]
  const covered = hole.diameter - 2 * cover.castAgainstEarth.value
  const length = Math.max(covered, Math.min(section.width + 4 * inch, hole.diameter))
  return { ...throughBarFields.first, length: wholeInches(length, 3) }
}

/** A load that was entered from the drawing is on the drawing. */
const callout = ({ loads }: PierSpec): Callout => ({ ...calloutFields.first, uplift: loads.entered?.uplift ?? null })

const fitted: Readonly<Record<string, (spec: PierSpec) => unknown>> = {
  'hole.bell': bell,
  'hole.flare': flare,
  'site.lower': lower,
  bars,
  callout,
}

/** An optional part as it is first put into this pier: the field's own `initial`, fitted to the hole and post that are there. */
export const partInitial = (spec: PierSpec, path: string, initial: unknown): unknown => fitted[path]?.(spec) ?? initial
