import { describe, expect, it } from 'vitest'
import type { PresumptiveClass, Soil } from '../../../src/core/model/spec.ts'
import { roleColours } from '../../../src/export/roleColours.ts'
import { lightOf, mineralGrain, type Tile, woodGrain } from '../../../src/view/scene/materials/bakedTiles.ts'
import { groundLook, mineralLooks, type PlacedMineral } from '../../../src/view/scene/materials/mineralLooks.ts'
import { close } from '../../close.ts'
import { ciede2000, labOf, leastDifference, type Triple } from '../../seenColours.ts'

/** Mean colour of a tile in linear light. */
const meanOf = (tile: Tile): Triple => {
  const light = Array.from({ length: 256 }, (_, k) => lightOf(`#${k.toString(16).padStart(2, '0').repeat(3)}`)[0])
  const sum = [0, 0, 0]
  for (let i = 0; i < tile.length; i += 4) for (let k = 0; k < 3; k++) sum[k] = (sum[k] ?? 0) + (light[tile[i + k] ?? 0] ?? 0)
  return sum.map((value) => (4 * value) / tile.length) as unknown as Triple
}

/** Far enough apart to be told at a glance; a difference of 1 is just seen. Assumed here. */
const atAGlance = 6

describe('[V15] materials are told apart at a glance, with any kind of sight', () => {
  const classes: readonly PresumptiveClass[] = ['sand', 'clay', 'gravel', 'foliated-rock', 'crystalline-rock']
  const soils = new Map<string, Triple>(
    [false, true].flatMap((isLower): [string, Triple][] => [
      ...classes.map((name): [string, Triple] => [
        `${name} ground${isLower ? ', deeper' : ''}`,
        meanOf(mineralGrain(groundLook({ kind: 'presumptive', class: name }, isLower))),
      ]),
      [
        `described ground${isLower ? ', deeper' : ''}`,
        meanOf(mineralGrain(groundLook({ kind: 'user' } as Extract<Soil, { kind: 'user' }>, isLower))),
      ],
    ]),
  )
  const placed = new Map<string, Triple>([
    ...Object.entries(mineralLooks).map(([name, look]): [string, Triple] => [name, meanOf(mineralGrain(look))]),
    ['wood', meanOf(woodGrain('#dfbe97', '#bb8d61'))],
    ['treated wood', meanOf(woodGrain('#d0b684', '#a58a58'))],
  ])
  const colourOf = (name: string): Triple => placed.get(name) ?? soils.get(name) ?? [0, 0, 0]
  const isTold = (a: string, b: string): void => {
    const { difference, sight } = leastDifference(colourOf(a), colourOf(b))
    expect(difference, `${a} and ${b}, ${sight}`).toBeGreaterThan(atAGlance)
  }

  it('what is placed in the hole, from every ground', () => {
    for (const soil of soils.keys()) for (const name of placed.keys()) isTold(name, soil)
  })

  it('what lies on each other in the hole', () => {
    const meeting: readonly (readonly [PlacedMineral, ...PlacedMineral[]])[] = [
      ['concrete', 'granular', 'gravel', 'backfill', 'topsoil', 'mulch', 'flowable-fill', 'dry-mix'],
      ['dry-mix', 'backfill', 'gravel', 'topsoil', 'mulch'],
      ['flowable-fill', 'gravel', 'backfill', 'topsoil', 'mulch'],
      ['granular', 'backfill', 'topsoil', 'mulch'],
      ['topsoil', 'backfill', 'mulch'],
      ['backfill', 'gravel', 'mulch'],
    ]
    for (const [name, ...others] of meeting) for (const other of others) isTold(name, other)
    for (const name of Object.keys(mineralLooks)) for (const wood of ['wood', 'treated wood']) isTold(name, wood)
  })

  it('what is chosen for one another: stone in lifts or stone at the bottom, and all ways to fill the hole', () => {
    isTold('granular', 'gravel')
    const fills: readonly PlacedMineral[] = ['concrete', 'dry-mix', 'flowable-fill', 'granular', 'backfill']
    for (const [i, fill] of fills.entries()) for (const other of fills.slice(i + 1)) isTold(fill, other)
  })

  it('in the same colours on the page, in its drawings and in its files', () => {
    const names = [...Object.keys(mineralLooks), 'wood'] as (PlacedMineral | 'wood')[]
    const seen = (hex: string): Triple => labOf(lightOf(hex))
    for (const name of names) expect(ciede2000(seen(roleColours[name]), labOf(colourOf(name))), name).toBeLessThan(1)
    expect(ciede2000(seen(roleColours.soil), labOf(colourOf('sand ground')))).toBeLessThan(1)
    expect(ciede2000(seen(roleColours['soil-lower']), labOf(colourOf('sand ground, deeper')))).toBeLessThan(1)
  })

  it('by a measure that gives the published examples', () => {
    // Sharma, Wu and Dalal 2005, table 1, pairs 1, 7, 25 and 34.
    const pairs: readonly (readonly [Triple, Triple, number])[] = [
      [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
      [[50, 0, 0], [50, -1, 2], 2.3669],
      [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
      [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
    ]
    for (const [a, b, told] of pairs) close(ciede2000(a, b), told, { abs: 5e-5, rel: 0 })
    const [lightness, ...hues] = labOf([1, 1, 1])
    close(lightness, 100, { abs: 0.01, rel: 0 })
    for (const hue of hues) close(hue, 0, { abs: 0.02, rel: 0 })
  })
})
