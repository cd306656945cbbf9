import { barTensionFactors, workedBarTension } from '../../engineering/concrete/barSteel.ts'
import { workedDevelopmentTable } from '../../engineering/concrete/development.ts'
import { retold, weakest } from '../../engineering/showing.ts'
import { barGrades, bars } from '../../engineering/tables/bars.ts'
import type { Counting } from '../../model/kind.ts'
import type { Worked } from '../../model/worked.ts'
import { pascals } from '../../units/quantity.ts'
import { countingOf, inRangeOfCode } from '../counting.ts'
import { given } from '../given.ts'
import type { PierFrame } from '../pierFrame.ts'
import { mixBetween } from '../placedZones.ts'

const carried: Counting = { counted: 'counted', why: 'vertical-bars-carry', sources: ['aci-318-19-25-4-2-3'] }
const tooShort: Counting = { counted: 'not counted', why: 'vertical-bars-too-short', sources: ['aci-318-19-25-4-2-3'] }
const plain: Counting = { counted: 'not counted', why: 'plain-concrete-tension', sources: ['aci-318-19-14'] }

/** What carries a pull across a level plane of the mix, whether it counts, and how far upright bars reach past that plane. */
type Across = Readonly<{ counting: Counting; allowable: Worked | null; worked: readonly Worked[] }>

/**
 * Vertical bars across a level plane of the mix at working stress, counted where each reaches its development length above the plane and
 * below it. A share of that length counts for nothing, and nor does plain concrete: the code gives it no value in direct tension.
 * @param plane level [m], signed
 */
export function barsAcross(frame: PierFrame, plane: number): Across {
  const { spec, profile } = frame
  const { strength } = countingOf(spec)
  const upright = spec.verticalBars
  const ring = upright && profile.shaftRadius - upright.cover - bars[upright.size].diameter.value / 2
  const mix = ring === null ? null : mixBetween(frame, ring)
  if (!upright || ring === null || !mix)
    return { counting: strength.counted === 'not counted' ? strength : plain, allowable: null, worked: [] }
  const { diameter, area } = bars[upright.size]
  const grade = barGrades[upright.grade].yield
  const standings = [diameter.standing, grade.standing]
  const clear = 2 * ring * Math.sin(Math.PI / upright.count) - diameter.value
  const asked = workedDevelopmentTable(
    {
      diameter: diameter.value,
      yield: grade.value,
      strength: spec.concrete.strength,
      top: false,
      epoxy: upright.coating === 'epoxy' ? 1.5 : 1,
      clear: clear >= 2 * diameter.value && upright.cover >= diameter.value,
    },
    { standings },
  )
  const reach = (id: string, length: number) => given(id, Math.max(0, length), 'length', { formula: 'l' })
  const above = reach('bars-reach-above', mix.top - upright.cover - plane)
  const below = reach('bars-reach-below', plane - mix.bottom - upright.cover)
  const isDeveloped = Math.min(above.value, below.value) >= asked.value * (1 - 1e-9)
  const steel = workedBarTension(
    {
      area: area.value,
      stress: pascals(Math.min(barTensionFactors.workingStress.value, 0.6 * grade.value)),
      count: upright.count,
    },
    { standings: [...standings, barTensionFactors.workingStress.standing] },
  )
  return {
    counting: strength.counted === 'not counted' ? strength : inRangeOfCode(spec, isDeveloped ? carried : tooShort),
    allowable: retold(steel, 'vertical-bar-tension', { standing: weakest(steel.standing, asked.standing) }),
    worked: [asked, above, below],
  }
}
