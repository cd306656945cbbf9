let sectionStands = false

/** The drawn section has taken the place of the 3D picture for good. */
export const markReady = (): void => {
  sectionStands = true
}

/** The first 3D picture was drawn, or the section stands in its place. */
export const isReady = (): boolean => sectionStands || (window.pierglass?.rendererInfo() ?? null) !== null
