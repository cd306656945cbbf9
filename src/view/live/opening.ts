/** A point that the page passes as it opens: others wait for it, and it stands on the browser's own timeline by its name. */
type Mark = Readonly<{ pass: () => void; isPassed: () => boolean; passed: Promise<void> }>

const mark = (name: string): Mark => {
  let isPassed = false
  let tell = (): void => undefined
  const passed = new Promise<void>((resolve) => {
    tell = resolve
  })
  const pass = (): void => {
    if (isPassed) return
    isPassed = true
    performance.mark(name)
    tell()
  }
  return { pass, isPassed: () => isPassed, passed }
}

/** The drawn section stands, with the main numbers and the cautions. Until then nothing else is fetched. */
export const numbers = mark('numbers')
/** The 3D picture stands, or the drawn section has taken its place for good. */
export const picture = mark('picture')

let touched: Promise<void> | null = null
/** Listened for from the first part that waits. */
const firstTouch = (): Promise<void> => {
  touched ??= new Promise<void>((resolve) => {
    for (const kind of ['pointerdown', 'keydown', 'wheel', 'beforeprint'])
      addEventListener(kind, () => resolve(), { once: true, capture: true, passive: true })
  })
  return touched
}

let waiting = 0

/** When a part of the page is fetched. */
type Turn = <T>(load: () => Promise<T>) => Promise<T>

/** What the first picture has no need of, and a person soon will. */
export const afterNumbers: Turn = async (load) => {
  await numbers.passed
  return load()
}

/** What comes by itself but is not looked at first: once the picture stands, or sooner if a hand touches the page. */
export const afterPicture: Turn = async (load) => {
  waiting++
  try {
    await Promise.race([picture.passed, firstTouch()])
    return await load()
  } finally {
    waiting--
  }
}

/** Everything that comes by itself is there. */
export const isAllThere = (): boolean => picture.isPassed() && waiting === 0
