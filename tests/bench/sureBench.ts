import { compile } from 'mathjs'
import { derivePier } from '../../src/core/derive/derivePier.ts'
import { tableProperties } from '../../src/core/derive/properties.ts'
import { bars } from '../../src/core/engineering/tables/bars.ts'
import { postSections } from '../../src/core/engineering/tables/postSections.ts'
import { presumptiveSoils } from '../../src/core/engineering/tables/soils.ts'
import { postMoisture, woodUnitWeight } from '../../src/core/engineering/wood/woodUnitWeight.ts'
import type { PierSpec } from '../../src/core/model/spec.ts'
import { defaultSpec } from '../../src/core/spec/defaults.ts'
import { metres, slope } from '../../src/core/units/quantity.ts'
import { startingAssumptions } from '../../src/core/uncertainty/assumptions.ts'
import { valueAtShare } from '../../src/core/uncertainty/distributions.ts'
import { asEntered, type Draw, inputsOf } from '../../src/core/uncertainty/inputs.ts'
import { randomNumbers } from '../../src/core/uncertainty/randomNumbers.ts'
import { simulate } from '../../src/core/uncertainty/simulate.ts'
import { drawnSpec, keptProperties, upliftSample } from '../../src/core/uncertainty/upliftSample.ts'
import { benchPiers } from './piers.ts'
import { line, sink, time } from './timing.ts'

const samples = 20_000

/** A level site without frost and a flat top at grade: a pier whose governing link can be written in a few lines. */
const plainPier: PierSpec = {
  ...defaultSpec,
  site: { ...defaultSpec.site, slope: slope(0), topsoil: metres(0), frostDepth: metres(0) },
  top: { ...defaultSpec.top, shape: 'flat', rim: metres(0) },
}

/** Weight and side friction of that pier, its governing link and no other, as expressions of a general mathematics library. */
const governing = compile(`
  wood = w ^ 2 * (depth - foot)
  inwood = bar * w
  concrete = pi / 4 * d ^ 2 * depth - wood - (bar * length - inwood)
  post = wood + w ^ 2 * above - inwood
  weight = concrete * gc + post * gw + bar * length * gs
  friction = (1 - sin(phi)) * tan(phi) * g * depth ^ 2 / 2 * pi * d
  friction / 2 + 0.6 * weight`)

/** The same tries as a study makes of a pier: one draw after another, in the study's own order. */
function* draws(spec: PierSpec, count: number): Generator<Draw> {
  const random = randomNumbers(1)
  const here = inputsOf(spec).map(({ id }) => id)
  const varied = startingAssumptions.filter(({ id }) => here.includes(id)).map(({ id, spread }) => ({ id, at: valueAtShare(spread) }))
  const draw = asEntered()
  for (let i = 0; i < count; i++) {
    for (const { id, at } of varied) draw[id] = at(random())
    yield draw
  }
}

function byExpressions(count: number): number {
  const { bars: through, support, hole } = plainPier
  if (!through || support.kind !== 'embedded') throw new Error('bench: the plain pier has a post in it and a bar')
  const { weighing, gravity } = tableProperties(plainPier)
  const soil = presumptiveSoils.sand.estimate
  const fixed = {
    w: postSections[plainPier.post.section].width,
    foot: support.foot,
    above: plainPier.post.heightAboveGrade,
    bar: (Math.PI / 4) * bars[through.size].diameter.value ** 2,
    gs: weighing('bar').moist,
  }
  let sum = 0
  for (const draw of draws(plainPier, count)) {
    const { entries } = governing.evaluate({
      ...fixed,
      d: hole.diameter + draw['hole-diameter'],
      depth: hole.depth + draw['hole-depth'],
      length: through.length - 2 * draw['bar-off-middle'],
      gc: weighing('concrete').moist * draw['concrete-weight'],
      gw: woodUnitWeight({ gravity: gravity * draw['wood-gravity'], moisture: postMoisture.light }),
      g: soil.moist.value * draw['soil-weight'],
      phi: (soil.frictionAngle?.value ?? 0) + draw['friction-angle'],
    }) as { entries: number[] }
    sum += entries.at(-1) ?? Number.NaN
  }
  return sum
}

function byChain(spec: PierSpec, count: number): number {
  const kept = keptProperties(spec)
  let sum = 0
  for (const draw of draws(spec, count)) sum += upliftSample(spec, draw, kept).governing?.allowable?.value ?? Number.NaN
  return sum
}

function byWholeDerive(spec: PierSpec, count: number): void {
  for (const draw of draws(spec, count)) sink[0] = derivePier(drawnSpec(spec, draw))
}

/** Time that the processor spends on this program alone, all threads [ms]: what is left of a measure on a busy machine. Median of runs. */
function processorTime(run: () => unknown, runs: number): number {
  const spent = Array.from({ length: runs }, () => {
    const before = process.cpuUsage()
    sink[0] = run()
    const { user, system } = process.cpuUsage(before)
    return (user + system) / 1000
  }).sort((a, b) => a - b)
  return spent[runs >> 1] ?? Number.NaN
}

const study = (spec: PierSpec, count: number) => simulate(spec, startingAssumptions, { samples: count, seed: 1 })
const each = (median: number, count: number): string => `${((median / count) * 1000).toFixed(1)} us a try`
const ratio = (a: number, b: number): string => (a / b).toFixed(1)

/** Speed of a study of ranges, next to a whole derive at every try and to a general mathematics library working out one link. */
export function benchSure(): void {
  const [ours, theirs] = [byChain(plainPier, 200), byExpressions(200)]
  if (!(Math.abs(theirs / ours - 1) < 1e-9)) throw new Error(`bench: the two do not work out the same link: ${ours} and ${theirs} N`)
  console.log('how sure: ranges carried through the uplift chain')
  const begun = performance.now()
  sink[0] = study(defaultSpec, samples)
  console.log(`  the very first 20,000 tries, nothing warm       ${(performance.now() - begun).toFixed(1).padStart(8)} ms`)
  for (const [name, spec] of Object.entries(benchPiers)) {
    const derive = time(() => derivePier({ ...spec, hole: { ...spec.hole } }), { warmUp: 200, runs: 300 })
    const tries = time(() => study(spec, samples), { warmUp: 2, runs: 9 })
    const whole = time(() => byWholeDerive(spec, 100), { warmUp: 1, runs: 5 })
    console.log(`  ${name}`)
    console.log(line('    one full derive', derive, 'aim: under 2 ms'))
    console.log(line('    20,000 tries', tries, `aim: under 400 ms; ${each(tries.median, samples)}`))
    const busy = processorTime(() => study(spec, samples), 9)
    console.log(`    the same in processor time, all threads   ${busy.toFixed(1).padStart(14)} ms   ${each(busy, samples)}`)
    console.log(line('    100 tries by a whole derive each', whole, each(whole.median, 100)))
    console.log(`    whole derive / study, per try     ${ratio(whole.median / 100, tries.median / samples)} times`)
  }
  const plain = time(() => study(plainPier, samples), { warmUp: 2, runs: 9 })
  const expressions = time(() => byExpressions(2_000), { warmUp: 2, runs: 9 })
  console.log('  a plain pier on a level site')
  console.log(line('    20,000 tries, all links', plain, each(plain.median, samples)))
  console.log(line('    2,000 tries, governing link by expressions', expressions, each(expressions.median, 2_000)))
  console.log(
    `    expressions (one link) / study (all links), per try   ${ratio(expressions.median / 2_000, plain.median / samples)} times`,
  )
  console.log('  growth with the number of tries:')
  let before = 0
  for (const count of [2_500, 5_000, 10_000, 20_000, 40_000, 80_000]) {
    const { median } = time(() => study(defaultSpec, count), { warmUp: 1, runs: 5 })
    const growth = before > 0 ? `   ${ratio(median, before)} times the half` : ''
    console.log(`    ${String(count).padStart(6)}   ${median.toFixed(1).padStart(7)} ms   ${each(median, count)}${growth}`)
    before = median
  }
  console.log('')
}
