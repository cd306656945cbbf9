import { counting } from '../counting.ts'
import { declareFill } from '../record.ts'

/** A pier of mixed concrete with a steel bracket set in it or anchored to it; all the wood stands above grade. */
export const mixedBracketPier = declareFill({
  id: 'mixed-bracket-pier',
  support: 'bracket',
  fields: {},
  prices: { first: 'oe', replacement: 're' },
  lifts: (_fill, site) => [{ id: 'concrete', role: 'concrete', label: 'concrete', to: site.end }],
  supply: { concrete: 'ready-mix' },
  hasTop: true,
  counting: {
    weight: counting.concreteWeight,
    sideFriction: counting.concreteFriction,
    connection: counting.bracketBolts,
    strength: counting.mixedStrength,
    sideways: counting.concreteSideways,
  },
  lateralWidth: 'hole',
  steps: [
    'drill',
    'clean-out',
    'place-base',
    'place-vertical-bars',
    'place-mixed',
    'consolidate',
    'set-bracket',
    'finish-top',
    'cure',
    'set-post-on-bracket',
  ],
  cautions: ['bracket-rating', 'brace-frame-sideways'],
  sources: ['ibc-1810-3-3-1-5', 'irc-r317-1-4', 'nds-2018-12-3-1'],
})
