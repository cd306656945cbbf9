import type { StepCheckId, StepId } from '../../model/saidIds.ts'
import type { Role } from '../../model/solid.ts'

/** What a step brings, what hurts at it, what is checked. */
export type StepPractice = Readonly<{
  /** Roles of the zones that come with it, and those of their ids that are meant where a role is not enough. */
  brings?: Readonly<{ roles: readonly Role[]; id?: RegExp }>
  /** Does it cover what stands in the hole? */
  covers?: true
  dangers?: readonly string[]
  checks: readonly StepCheckId[]
  inspection?: true
}>

const cement = ['cement-burns']
const dusty = ['silica-dust', 'cement-burns']

/**
 * Steps of all kinds by their keys. Posts are looked at after they are set and before concrete hides them.
 * Inspection after posts are set and before concrete: IRC R109.1.1. Checks: common practice, no source.
 */
export const stepPractice: Readonly<Partial<Record<StepId, StepPractice>>> = {
  drill: { dangers: ['call-before-you-dig', 'open-holes'], checks: ['width-both-ways', 'hole-plumb', 'depth-downhill'] },
  'clean-out': { dangers: ['open-holes'], checks: ['bottom-firm', 'depth-again', 'no-water'] },
  'place-base': { brings: { roles: ['gravel', 'concrete', 'backfill'], id: /^base/ }, checks: ['base-thickness'] },
  'place-pad': { brings: { roles: ['concrete'] }, covers: true, dangers: cement, checks: ['pad-thickness', 'bottom-firm'] },
  'set-and-brace': {
    brings: { roles: ['wood'] },
    dangers: ['open-holes'],
    checks: ['post-plumb', 'post-tag', 'braced-both-ways'],
    inspection: true,
  },
  'place-bar': { brings: { roles: ['bar'] }, checks: ['bar-there', 'bar-sticks-out', 'bar-cover', 'cut-wood-coated'], inspection: true },
  'place-vertical-bars': { brings: { roles: ['bar'] }, checks: ['bars-cover'], inspection: true },
  'empty-bags': { brings: { roles: ['dry-mix', 'bar'] }, covers: true, dangers: dusty, checks: ['bags-counted', 'mix-all-round'] },
  'pour-dry': { brings: { roles: ['dry-mix', 'bar'] }, covers: true, dangers: dusty, checks: ['packed-in-lifts', 'post-plumb'] },
  'wet-from-top': { dangers: cement, checks: ['water-counted'] },
  'place-mixed': {
    brings: { roles: ['concrete', 'bar'] },
    covers: true,
    dangers: cement,
    checks: ['ticket', 'no-soil-in-mix', 'post-plumb'],
  },
  consolidate: { dangers: cement, checks: ['no-voids', 'post-plumb'] },
  'pour-flowable': { brings: { roles: ['flowable-fill', 'bar'] }, covers: true, dangers: cement, checks: ['post-held-down', 'post-plumb'] },
  'granular-in-lifts': { brings: { roles: ['granular', 'bar'] }, covers: true, checks: ['thin-lifts', 'post-plumb'] },
  'backfill-in-lifts': { brings: { roles: ['backfill', 'bar'] }, covers: true, checks: ['thin-lifts', 'post-plumb'] },
  'slope-soil-away': { checks: ['soil-falls-away'] },
  'finish-top': { dangers: cement, checks: ['top-sheds', 'top-above-uphill'] },
  cure: { checks: ['kept-moist', 'not-frozen'] },
  'remove-brace': { checks: ['strong-enough'] },
  'set-bracket': { checks: ['bracket-right-way'] },
  'set-bracket-in-wet-concrete': {
    brings: { roles: ['steel', 'bar'], id: /^(?!bolts$)/ },
    dangers: cement,
    checks: ['bracket-depth', 'bracket-line'],
  },
  'check-bracket-level': { checks: ['bracket-level', 'gap-open'] },
  'slot-and-treat-post-end': { checks: ['cut-wood-coated'] },
  'drill-and-clean-anchor-holes': { dangers: ['silica-dust'], checks: ['anchor-holes-clean'] },
  'set-anchors': { brings: { roles: ['steel'], id: /^(?!bolts$)/ }, checks: ['anchors-tight'] },
  'set-post-on-bracket': { brings: { roles: ['wood', 'steel'] }, checks: ['all-bolts', 'post-plumb', 'gap-open'] },
}
