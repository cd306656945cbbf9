export type MadeFile = Readonly<{ name: string; blob: Blob }>

/** An address stays good long enough for a slow disk [ms]. */
const keepFor = 60_000

/** Hands a file to the browser to save under its name. */
export const saveFile = ({ name, blob }: MadeFile): void => {
  const address = URL.createObjectURL(blob)
  const anchor = document.createElement('a')
  anchor.href = address
  anchor.download = name
  anchor.click()
  setTimeout(() => URL.revokeObjectURL(address), keepFor)
}

const asFile = ({ name, blob }: MadeFile): File => new File([blob], name, { type: blob.type })

/** Can this browser hand a file like this one to another app? */
export const canShare = (made: MadeFile): boolean => {
  try {
    return navigator.canShare?.({ files: [asFile(made)] }) === true
  } catch {
    return false
  }
}

/** From the tap itself, with a file that is ready. False when the other app, or the person, said no. */
export const shareFile = async (made: MadeFile): Promise<boolean> => {
  try {
    await navigator.share({ files: [asFile(made)], title: made.name })
    return true
  } catch {
    return false
  }
}

/** Today in the order that files and drawings have: 2026-11-25. */
export const today = (): string => {
  const now = new Date()
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-')
}
