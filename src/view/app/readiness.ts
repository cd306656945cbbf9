import { isAllThere, picture } from '../live/opening.ts'

let isInPlace = false

/** The drawn section has taken the place of the 3D picture for good. */
export const markReady = (): void => {
  isInPlace = true
  picture.pass()
}

/** A 3D picture was drawn, or the section stands in its place; and the rest of the page is there. */
export const isReady = (): boolean => (isInPlace || (window.pierglass?.rendererInfo() ?? null) !== null) && isAllThere()
