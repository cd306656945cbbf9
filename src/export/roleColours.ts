import type { Role } from '../core/model/solid.ts'

/** Colours of materials in files, sRGB: the same as on the page, which keeps them in its style sheet. */
export const roleColours: Readonly<Record<Role, string>> = {
  topsoil: '#544535',
  soil: '#b3946c',
  'soil-lower': '#999586',
  backfill: '#7d5f3d',
  granular: '#a0937c',
  gravel: '#8a8578',
  mulch: '#4a3b2d',
  'dry-mix': '#c7bfae',
  concrete: '#a9a59f',
  'flowable-fill': '#94a09a',
  wood: '#dfbe97',
  bar: '#5d6163',
  steel: '#85898b',
}
