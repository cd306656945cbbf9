import type { Director } from './Director.ts'
import { readTones } from './readTones.ts'
import type { Tones } from './Stage.ts'

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

/** White behind the pier whatever the page is, so that a printer lays no ink there. */
export const paperTones: Tones = { paper: '#ffffff', ink: '#1b1f23', accent: '#7a1f5c', isDark: false }

/** The cutaway as `capturePicture` takes it, on white paper. The screen keeps its own colours. */
export function pictureForPaper(width: number, height: number): Promise<Blob | null> {
  const standing = director
  standing?.setTones(paperTones)
  const taken = capturePicture(width, height)
  standing?.setTones(readTones())
  standing?.reframe()
  return taken
}
