import type { SourceId } from '../../../src/core/engineering/sources.ts'

/**
 * A thing that is said, or done in reckoning, and is not so. `sentence`: key of the words that put it right; null where
 * the reckoning alone does. `tests`: files in which a test named "[trap n]" keeps it from being reckoned wrongly.
 */
export type Trap = Readonly<{ number: number; id: string; sentence: string | null; tests: readonly string[]; sources: readonly SourceId[] }>
const trap = (number: number, id: string, says: boolean, tests: readonly string[], sources: readonly SourceId[]): Trap => ({
  number,
  id,
  sentence: says ? `trap-${id}` : null,
  tests,
  sources,
})
const evidence = 'tests/core/engineering/life/evidence.test.ts'
const examples = 'tests/external/water-and-time-examples/check.test.ts'

/** Sixteen claims that need care. Source: assumption (the list); each names its own. */
export const traps: readonly Trap[] = [
  trap(1, 'concrete-rots-posts', true, [evidence], ['nicholas-2019']),
  trap(2, 'concrete-protects-posts', true, [evidence], ['nicholas-2019']),
  trap(3, 'dry-mix-never-hydrates', true, [evidence], ['bohnhoff-2003']),
  trap(4, 'more-water-fixes-dry-mix', true, [examples], ['hydration-water', 'computed-here']),
  trap(
    5,
    'gel-strength-is-no-constant',
    true,
    ['tests/external/gel-space-textbook/check.test.ts'],
    ['gel-space-textbook', 'nist-hydration'],
  ),
  trap(6, 'climate-index-for-buried-wood', true, ['tests/external/wbdg-decay/check.test.ts'], ['wbdg-decay']),
  trap(7, 'rain-day-definition', true, ['tests/external/noaa-seattle-2012/check.test.ts'], ['scheffer-1971', 'noaa-seattle-2012']),
  trap(8, 'factor-values-from-the-standard', true, ['tests/core/engineering/life/factorMethod.test.ts'], ['iso-15686-8-scope']),
  trap(9, 'saturated-or-model-conductivity', false, ['tests/external/rawls-1983-table/check.test.ts'], ['rawls-1983-table']),
  trap(10, 'six-inches-in-ten-feet', true, ['tests/external/irc-r401-3/check.test.ts'], ['irc-r401-3']),
  trap(11, 'treated-posts-last-sixty-years', true, [evidence], ['lebow-2013', 'lebow-2015', 'stakes-canada-2017', 'lebow-2018']),
  trap(12, 'stand-off-is-no-requirement', true, ['tests/core/engineering/traps.test.ts'], ['irc-r317-1-4']),
  trap(13, 'three-hundred-drum-turns', true, ['tests/external/aci-306/check.test.ts'], ['astm-c94']),
  trap(14, 'drilled-pier-specification', true, ['tests/external/aci-117m-10/check.test.ts'], ['aci-336-1-scope', 'aci-117m-10']),
  trap(15, 'gravel-drains-the-hole', true, ['tests/core/engineering/moisture/woodWetness.test.ts'], ['extension-answer-2018']),
  trap(16, 'published-arithmetic', false, ['tests/external/missouri-shrinkage-4-34/check.test.ts'], ['missouri-shrinkage-4-34']),
]
