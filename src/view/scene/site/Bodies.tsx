import { useLayoutEffect, useMemo } from 'react'
import { lookKey, type ZoneMaterials, zoneMaterials } from '../materials/zoneMaterials.ts'
import type { PlacedPier } from '../pier/placedPier.ts'
import { type BodyGeometry, type Body, writeBodies } from './buffers.ts'
import { type SiteKit, useHeld } from './kit.ts'

type Props = Readonly<{ places: readonly PlacedPier[]; kit: SiteKit; isFull: boolean; pointedAt: string | null }>

/** All bodies of a site, those that look the same in one draw however many piers they are of. */
export function Bodies({ places, kit, isFull, pointedAt }: Props) {
  const quality = isFull ? 'full' : 'light'
  const looks = useMemo(() => {
    const found = new Map<string, { ids: string[]; bodies: Body[] }>()
    for (const standing of places)
      for (const part of standing.pier.parts) {
        const { zone } = part
        const key = lookKey(zone.role, standing.pier.result.spec, quality, standing.pier.post)
        const look = found.get(key) ?? { ids: [], bodies: [] }
        found.set(key, look)
        if (!look.ids.includes(zone.id)) look.ids.push(zone.id)
        look.bodies.push({ standing, part, number: look.ids.indexOf(zone.id) })
      }
    return [...found]
  }, [places, quality])
  return looks.map(([key, { ids, bodies }]) => (
    <BodiesOfLook key={key} bodies={bodies} kit={kit} isFull={isFull} lit={pointedAt === null ? -1 : ids.indexOf(pointedAt)} />
  ))
}

type LookProps = Readonly<{ bodies: readonly Body[]; kit: SiteKit; isFull: boolean; lit: number }>

/** Bodies that look the same, and a rim round steel. */
function BodiesOfLook({ bodies, kit, isFull, lit }: LookProps) {
  const { role } = (bodies[0] as Body).part.zone
  const materials = useHeld('materials', (): ZoneMaterials => {
    const { result, post } = (bodies[0] as Body).standing.pier
    return zoneMaterials(role, result.spec, kit.shared, isFull ? 'full' : 'light', post)
  })
  const geometry = useHeld(bodies, (before: BodyGeometry | null) => writeBodies(bodies, before))
  useLayoutEffect(() => {
    materials.lit.value = lit
  }, [materials, lit])
  const isShown = geometry.drawRange.count > 0
  return (
    <>
      <mesh
        geometry={geometry}
        material={materials.pair as [...ZoneMaterials['pair']]}
        castShadow={isFull}
        receiveShadow
        frustumCulled={false}
        visible={isShown}
      />
      {(role === 'bar' || role === 'steel') && (
        <mesh geometry={geometry} material={kit.lines.rim} onBeforeRender={kit.lines.sizeRim} frustumCulled={false} visible={isShown} />
      )}
    </>
  )
}
