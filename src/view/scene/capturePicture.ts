import type { Director } from './Director.ts'

let director: Director | null = null

/** The scene hands itself in while it stands, and takes itself back with null. */
export const offerDirector = (standing: Director | null): void => {
  director = standing
}

/** Browsers give up on canvases beyond this many pixels. */
const mostPixels = 16_777_216

/**
 * The cutaway as it is seen now, as a PNG of this size in pixels; made smaller, in the same shape, where a browser could not
 * draw it. Null when there is no 3D picture or the browser makes no file.
 */
export function capturePicture(width: number, height: number): Promise<Blob | null> {
  if (!director || !(width >= 1 && height >= 1)) return Promise.resolve(null)
  const shrink = Math.min(1, Math.sqrt(mostPixels / (width * height)))
  return director.capture(Math.floor(width * shrink), Math.floor(height * shrink))
}
