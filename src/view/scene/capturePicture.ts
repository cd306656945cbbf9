import { Vector2 } from 'three'
import type { PictureCamera } from './camera/PictureCamera.ts'
import { focalPixels } from './camera/lens.ts'
import { PaperScale } from './materials/paperScale.ts'
import type { LivePicture } from './PierColumns.tsx'
import { paperTones, readTones } from './site/tones.ts'

let picture: LivePicture | null = null

/** The scene hands itself in while it stands, and takes itself back with null. */
export const offerPicture = (standing: LivePicture | null): void => {
  picture = standing
}

/** Browsers give up on canvases beyond this many pixels. */
const mostPixels = 16_777_216

/**
 * The cutaway as it is seen now, as a PNG of this size in pixels; made smaller, in the same shape, where a browser could not
 * draw it. Null when there is no 3D picture, when its drawing context is lost, or when the browser makes no file.
 */
export function capturePicture(width: number, height: number): Promise<Blob | null> {
  // A context that was lost draws nothing and says so to nobody.
  if (!picture || picture.state.gl.getContext().isContextLost() || !(width >= 1 && height >= 1)) return Promise.resolve(null)
  const shrink = Math.min(1, Math.sqrt(mostPixels / (width * height)))
  return capture(picture, Math.floor(width * shrink), Math.floor(height * shrink))
}

/** Draws the picture once at another size and hands it over as a PNG file; null when the browser makes none. */
function capture({ eye, kit, state }: LivePicture, width: number, height: number): Promise<Blob | null> {
  const { gl, scene, advance } = state
  const camera = state.camera as PictureCamera
  const ratio = gl.getPixelRatio()
  const size = gl.getSize(new Vector2())
  const share = height / size.height
  const pose = eye.pose()
  const marks = kit.uPaperScale.value
  const before = marks.clone()
  // Lines grow with the picture; marks half as much, so that a large picture shows more of them.
  const rung = PaperScale.rungFor((pose.distance / focalPixels(height)) * Math.sqrt(share))
  kit.lines.scale(share)
  marks.set(rung, rung, 0)
  gl.setPixelRatio(1)
  gl.setSize(width, height, false)
  camera.take({ ...pose, shift: [pose.shift[0] * share, pose.shift[1] * share] }, { width, height })
  gl.render(scene, camera)
  const made = new Promise<Blob | null>((done) => gl.domElement.toBlob(done, 'image/png'))
  kit.lines.scale(1)
  marks.copy(before)
  gl.setPixelRatio(ratio)
  gl.setSize(size.width, size.height, false)
  advance(performance.now())
  return made
}

/** The cutaway as `capturePicture` takes it, on white paper. The screen keeps its own colours. */
export function pictureForPaper(width: number, height: number): Promise<Blob | null> {
  const standing = picture
  standing?.dress(paperTones)
  const taken = capturePicture(width, height)
  standing?.dress(readTones())
  standing?.state.advance(performance.now())
  return taken
}
