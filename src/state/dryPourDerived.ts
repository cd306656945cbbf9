import { type DryPourPicture, dryPourPicture } from '../core/derive/mix/dryPourPicture.ts'
import type { PierSpec } from '../core/model/spec.ts'
import { perSpec } from './perSpec.ts'

/** The picture of a dry pour. */
export const dryPourOf: (spec: PierSpec) => DryPourPicture | null = perSpec(dryPourPicture)
