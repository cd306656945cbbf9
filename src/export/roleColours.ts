import type { Role } from '../core/model/solid.ts'

/**
 * Colours of materials in files, sRGB: the same as on the page, which keeps them in its style sheet, and as what the picture shows of
 * them on the whole; ground is sand.
 */
export const roleColours: Readonly<Record<Role, string>> = {
  topsoil: '#514130',
  soil: '#ad9671',
  'soil-lower': '#a3957b',
  backfill: '#705c43',
  granular: '#5c5f63',
  gravel: '#74726e',
  mulch: '#6f4527',
  'dry-mix': '#b3aa97',
  concrete: '#b6b4b1',
  'flowable-fill': '#cad1c9',
  wood: '#d7b48d',
  bar: '#5d6163',
  steel: '#85898b',
}
