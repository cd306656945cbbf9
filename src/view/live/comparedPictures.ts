type Take = () => readonly (string | null)[] | null

let take: Take | null = null

/** The comparison's scene hands this in while it stands, and takes it back with null. */
export const offerComparedPictures = (taking: Take | null): void => {
  take = taking
}

/** Each column of the comparison as it is seen now, on white, as the address of an image; null for one without a pier. Null without a 3D picture. */
export const comparedPictures = (): readonly (string | null)[] | null => take?.() ?? null
