import { describe, expect, it } from 'vitest'
import { cutMeshes } from '../../../src/core/geometry/cutMeshes.ts'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { radians } from '../../../src/core/units/quantity.ts'
import { nearestHit, type Target } from '../../../src/view/scene/pointing/sightLines.ts'
import { close } from '../../close.ts'

const { zones } = derivePier(defaultSpec)
const half = { open: radians(Math.PI), facing: radians(Math.PI / 2) }
const meshes = cutMeshes(zones, half, { segments: 96, cutPost: false })
const still = { x: 0, y: 0, z: 0 }
const targets: Target[] = [...meshes].map(([id, mesh]) => ({ id, mesh, offset: still }))
const hitAt = (x: number, y: number, from: readonly Target[] = targets) =>
  nearestHit(from, Float64Array.of(x, y, 8, 0, 0, -1), { id: null, distance: 0 })

describe('[V3] what is pointed at', () => {
  it('is the first body on the sight line', () => {
    expect(hitAt(0, -0.5).id).toBe('post')
    expect(hitAt(0.15, -0.5).id).toBe('concrete')
    expect(hitAt(0.5, -0.5).id).toBe('soil')
    expect(hitAt(0.5, -0.09).id).toBe('topsoil')
    expect(hitAt(3, -0.5).id).toBeNull()
  })

  it('lies where the cut face lies', () => {
    close(hitAt(0.5, -0.5).distance, 8, { abs: 1e-6, rel: 0 })
  })

  it('follows a body that was lifted', () => {
    const lifted = targets.map((one) => (one.id === 'concrete' ? { ...one, offset: { x: 0, y: 3, z: 0 } } : one))
    expect(hitAt(0.15, -0.5, lifted).id).not.toBe('concrete')
    expect(hitAt(0.15, 2.5, lifted).id).toBe('concrete')
  })

  it('leaves out what is not shown', () => {
    const bare = targets.filter(({ id }) => id !== 'soil' && id !== 'topsoil')
    expect(hitAt(0.5, -0.5, bare).id).toBeNull()
  })
})
