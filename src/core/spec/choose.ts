import { presumptiveSoils } from '../engineering/tables/soils.ts'
import { bracketKinds, fillKinds } from '../kinds/index.ts'
import type { PierSpec, PresumptiveClass, Soil, Support } from '../model/spec.ts'
import { metres, pascals, radians } from '../units/quantity.ts'
import { toSI } from '../units/factors.ts'
import { defaultSpec } from './defaults.ts'
import { valueAt, withValueAt } from './path.ts'
import { settled } from './settle.ts'
import { validateSpec } from './validate.ts'

/** Choices that stand for more than one value. Everything else is put in place as it is. */
const wide: Readonly<Record<string, (spec: PierSpec, choice: string | number) => PierSpec>> = {
  'fill.kind': withFill,
  'support.bracket.kind': withBracket,
  'site.soil.kind': withSoil('site.soil'),
  'site.lower.soil.kind': withSoil('site.lower.soil'),
  'top.shape': withTopShape,
}

/** The pier with another choice at `path`, and all that follows from it. The choice must be one of the field's. */
export const withChoice = (spec: PierSpec, path: string, choice: string | number): PierSpec =>
  valueAt(spec, path) === choice ? spec : (wide[path]?.(spec, choice) ?? withValueAt(spec, path, choice))

const firstSupport = (kind: Support['kind']): Support => {
  if (kind === 'embedded') return defaultSpec.support
  const [first] = bracketKinds
  if (first === undefined) throw new Error('firstSupport: no bracket kinds')
  return { kind: 'bracket', bracket: first.defaults, standOff: metres(toSI(1, 'in')) }
}

/** Another way of filling brings its own values and its own support; bars go when there is no post in the hole to hold them. */
function withFill(spec: PierSpec, choice: string | number): PierSpec {
  const kind = fillKinds.find((one) => one.id === choice)
  if (kind === undefined) return spec
  const support = spec.support.kind === kind.support ? spec.support : firstSupport(kind.support)
  const bars = support.kind === 'embedded' ? spec.bars : null
  const next: PierSpec = { ...spec, fill: kind.defaults, support, bars }
  return settled(
    onItsSeat(next),
    (path) => /^(fill|support|bars|verticalBars|top)/.test(path),
    (part) => part === 'bars' || part === 'verticalBars',
  )
}

/** Where what is placed would end below the post's foot, the post is set down on the bottom. */
function onItsSeat(spec: PierSpec): PierSpec {
  const isBare = validateSpec(spec).some((issue) => issue.code === 'fill-without-post')
  return isBare && spec.support.kind === 'embedded' ? withValueAt(spec, 'support.foot', spec.hole.base?.thickness ?? 0) : spec
}

function withBracket(spec: PierSpec, choice: string | number): PierSpec {
  const kind = bracketKinds.find((one) => one.id === choice)
  if (kind === undefined || spec.support.kind !== 'bracket') return spec
  const next: PierSpec = { ...spec, support: { ...spec.support, bracket: kind.defaults } }
  return settled(
    next,
    (path) => path.startsWith('support'),
    () => false,
  )
}

/** From a class to the user's own values, starting at the class's; and back to sand. */
function withSoil(path: string) {
  return (spec: PierSpec, choice: string | number): PierSpec => {
    const soil: Soil = choice === 'user' ? userSoil(valueAt(spec, `${path}.class`)) : { kind: 'presumptive', class: 'sand' }
    return withValueAt(spec, path, soil)
  }
}

function userSoil(known: unknown): Soil {
  const name: PresumptiveClass = Object.hasOwn(presumptiveSoils, String(known)) ? (known as PresumptiveClass) : 'sand'
  const { bearing, lateral, cohesion, estimate } = presumptiveSoils[name]
  return {
    kind: 'user',
    unitWeight: estimate.moist.value,
    frictionAngle: estimate.frictionAngle?.value ?? radians(toSI(30, 'deg')),
    cohesion: cohesion?.value ?? pascals(0),
    allowableBearing: bearing.value,
    lateral: lateral.value,
    sideFriction: pascals(0),
  }
}

/** A crown or a dish starts with a rise, or nobody would see it. */
function withTopShape(spec: PierSpec, choice: string | number): PierSpec {
  const rise = spec.top.rise > 0 ? spec.top.rise : defaultSpec.top.rise
  return withValueAt({ ...spec, top: { ...spec.top, rise } }, 'top.shape', choice)
}
