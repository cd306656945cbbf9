import { presumptiveSoils } from '../engineering/tables/soils.ts'
import { bracketKinds, fillKinds } from '../kinds/index.ts'
import { startOfKind } from '../fields/makers.ts'
import type { Bracket, OtherKind, PierSpec, PresumptiveClass, Soil, Support } from '../model/spec.ts'
import { pascals, radians } from '../units/quantity.ts'
import { toSI } from '../units/factors.ts'
import { defaultSpec } from './defaults.ts'
import { endsBelowPost, otherKind } from './otherKinds.ts'
import { valueAt, withValueAt } from './path.ts'
import { supportFields } from './pier/post.ts'
import { settled } from './settle.ts'
import { validateSpec } from './validate.ts'

/** Choices that stand for more than one value. Everything else is put in place as it is. */
const wide: Readonly<Record<string, (spec: PierSpec, choice: string | number, others: readonly OtherKind[]) => PierSpec>> = {
  'fill.kind': withFill,
  'support.bracket.kind': withBracket,
  'site.soil.kind': withSoil('site.soil'),
  'site.lower.soil.kind': withSoil('site.lower.soil'),
  'top.shape': withTopShape,
}

/**
 * The pier with another choice at `path`, and all that follows from it. The choice must be one of the field's.
 * @param others kinds that were in use before, whose values come back
 */
export const withChoice = (spec: PierSpec, path: string, choice: string | number, others: readonly OtherKind[] = []): PierSpec =>
  valueAt(spec, path) === choice ? spec : (wide[path]?.(spec, choice, others) ?? withValueAt(spec, path, choice))

const firstSupport = (id: Support['kind']): Support => {
  const kind = supportFields.kinds.find((one) => one.id === id)
  if (kind === undefined) throw new Error(`firstSupport: no support '${id}'`)
  return startOfKind(kind)
}

/** The first of several piers that can be built; the last when none can. */
function firstBuildable(tries: readonly (() => PierSpec)[]): PierSpec | undefined {
  const made = tries.map((one, i) => ({ spec: one, isLast: i === tries.length - 1 }))
  for (const { spec, isLast } of made) {
    const pier = spec()
    if (isLast || validateSpec(pier).every((issue) => issue.severity !== 'error')) return pier
  }
  return undefined
}

/**
 * Another way of filling brings its own values and its own support; bars go when there is no post in the hole to hold them. What it had when it
 * was last in use comes back, and so does what its support had, as far as it can still be built.
 */
function withFill(spec: PierSpec, choice: string | number, others: readonly OtherKind[]): PierSpec {
  const kind = fillKinds.find((one) => one.id === choice)
  if (kind === undefined) return spec
  const changed = spec.support.kind !== kind.support
  const stood = changed ? otherKind(others, 'support', kind.support)?.pier : undefined
  const own = otherKind(others, 'fill', kind.id)?.pier
  const fresh: PierSpec = {
    ...spec,
    fill: kind.defaults,
    support: changed ? firstSupport(kind.support) : spec.support,
    bars: kind.support === 'embedded' ? spec.bars : null,
  }
  const fitted = (next: PierSpec) => () =>
    settled(
      next.support === own?.support ? next : onItsSeat(next),
      (path) => /^(fill|support|bars|verticalBars|top)/.test(path),
      (part) => part === 'bars' || part === 'verticalBars',
    )
  return (
    firstBuildable([
      ...(own ? [fitted({ ...fresh, ...stood, ...own })] : []),
      ...(stood ? [fitted({ ...fresh, ...stood })] : []),
      fitted(fresh),
    ]) ?? spec
  )
}

/** Where what is placed would end below the post's foot, the post is set down on the bottom. */
function onItsSeat(spec: PierSpec): PierSpec {
  return endsBelowPost(spec) && spec.support.kind === 'embedded' ? withValueAt(spec, 'support.foot', spec.hole.base?.thickness ?? 0) : spec
}

function withBracket(spec: PierSpec, choice: string | number, others: readonly OtherKind[]): PierSpec {
  const kind = bracketKinds.find((one) => one.id === choice)
  const { support } = spec
  if (kind === undefined || support.kind !== 'bracket') return spec
  const had = otherKind(others, 'bracket', kind.id)?.pier.support
  const fitted = (bracket: Bracket) => () =>
    settled(
      { ...spec, support: { ...support, bracket } },
      (path) => path.startsWith('support'),
      () => false,
    )
  return firstBuildable([...(had?.kind === 'bracket' ? [fitted(had.bracket)] : []), fitted(kind.defaults)]) ?? spec
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
