import { Matrix4, PerspectiveCamera, Vector3 } from 'three'
import { fieldOfView, lensPlace, type Pose, projectionRows, type Viewport } from './lens.ts'

const [right, up, out] = [new Vector3(), new Vector3(), new Vector3()]
const turned = new Matrix4()

/** The camera that draws: it stands where the lens of a pose stands and projects as the lens does, from perspective to orthographic. */
export class PictureCamera extends PerspectiveCamera {
  private shot: Readonly<{ pose: Pose; viewport: Viewport; size: number }> | null = null
  /** From the eye to the target, along the lens [m]. */
  back = 1

  constructor() {
    super((fieldOfView * 180) / Math.PI)
  }

  /** `size` [m]: distance from which the whole is framed, by which the nearest and the farthest plane go; as it was before, if it isn't told. */
  take(pose: Pose, viewport: Viewport, size = this.shot?.size ?? 8): void {
    this.shot = { pose, viewport, size }
    const { eye, axes, back } = lensPlace(pose)
    this.back = back
    this.position.set(...eye)
    this.quaternion.setFromRotationMatrix(turned.makeBasis(right.set(...axes[0]), up.set(...axes[1]), out.set(...axes[2])))
    this.updateProjectionMatrix()
    this.updateMatrixWorld()
  }

  override updateProjectionMatrix(): void {
    if (!this.shot) {
      super.updateProjectionMatrix()
      return
    }
    const { pose, viewport, size } = this.shot
    this.aspect = viewport.width / viewport.height
    this.near = Math.max(size * 0.02, this.back - size * 3)
    this.far = this.back + size * 5
    this.projectionMatrix.set(...projectionRows(pose, viewport, this.near, this.far))
    this.projectionMatrixInverse.copy(this.projectionMatrix).invert()
  }
}
