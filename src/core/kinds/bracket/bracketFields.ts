import { countField, inches, numberField } from '../../model/fieldMakers.ts'
import type { Field } from '../../model/field.ts'

/** The sizes that every bracket has. */
export const bracketSizes: readonly Field[] = [
  inches('support.bracket.plateThickness', 'steel', 0.125, 0.75, 0.0625),
  inches('support.bracket.boltDiameter', 'steel', 0.5, 1, 0.125),
  countField('support.bracket.boltCount', 'steel', 1, 4),
  inches('support.bracket.embedment', 'steel', 4, 48, 1),
  numberField(
    'support.bracket.rating',
    'steel',
    'force',
    { from: 1, to: 40_000, in: 'lb', step: 50, metric: 0.2, metricUnit: 'kN' },
    { nullable: true },
  ),
]
