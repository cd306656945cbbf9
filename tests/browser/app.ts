import { test as base, expect, type Locator, type Page } from '@playwright/test'
import type { Probe, RendererInfo } from '../../src/view/live/probe.ts'

export { expect }

/** Everything a page must not do, as it happens. Empty at the end of every test. */
const watch = async (page: Page, origin: string): Promise<string[]> => {
  const complaints: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`console: ${message.text()}`)
  })
  page.on('pageerror', (error) => complaints.push(`page error: ${error.message}`))
  page.on('request', (request) => {
    const url = request.url()
    const isOwn = url.startsWith(origin) || url.startsWith('data:') || url.startsWith(`blob:${origin}`)
    if (!isOwn) complaints.push(`request to ${url}`)
  })
  await page.exposeFunction('tellPolicyBreach', (what: string) => complaints.push(`content policy: ${what}`))
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const tell = (window as unknown as { tellPolicyBreach(what: string): void }).tellPolicyBreach
      tell(`${event.violatedDirective} ${event.blockedURI} ${event.sample}`)
    })
  })
  return complaints
}

/** A browser that draws no 3D: the drawn section takes the picture's place, at a fraction of the time. */
const takeAwayGraphics = async (page: Page): Promise<void> => {
  await page.context().addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return /webgl/.test(kind) ? null : Reflect.apply(real, this, [kind, ...rest])
    } as typeof real
  })
}

/** The page under test. Everything it reads comes through `window.pierglass`, everything it does goes through roles and names. */
export class App {
  readonly complaints: string[]

  constructor(
    readonly page: Page,
    complaints: string[],
  ) {
    this.complaints = complaints
  }

  /** Opens the app in the light profile and waits for its first picture. `hash` starts with #. */
  async open(hash = '', query = '?quality=light'): Promise<void> {
    await this.page.goto(`./${query}${hash}`)
    await this.ready()
  }

  /**
   * Opens the app with a clock that stands still until the test moves it on: frames and timers of the page come in `clock.runFor` alone.
   * It stands from the moment the picture has come to rest, where there is one.
   */
  async openWithClock(): Promise<void> {
    const { clock } = this.page
    await clock.install({ time: 0 })
    await this.open()
    if ((await this.read('rendererInfo')) !== null) await this.stillness()
    await clock.pauseAt(3_600_000)
  }

  async ready(): Promise<void> {
    await this.page.waitForFunction(() => window.pierglass?.ready() === true)
  }

  /** What one of the probe's functions gives, as plain data. */
  async read<K extends keyof Probe>(what: K): Promise<ReturnType<Probe[K]>> {
    return (await this.page.evaluate((name) => window.pierglass?.[name as keyof Probe](), what)) as ReturnType<Probe[K]>
  }

  async renderer(): Promise<RendererInfo> {
    const info = await this.read('rendererInfo')
    if (info === null) throw new Error('there is no 3D picture')
    return info
  }

  async spec() {
    return (await this.read('document')).spec
  }

  /** Volume of the hole [m3]. */
  async holeVolume(): Promise<number> {
    return (await this.read('result')).hole.volume.value
  }

  /**
   * Waits until nothing new has been drawn for `quiet` milliseconds and eight turns of the page, whichever ends later: a busy
   * machine gets the turns that it needs, a quick one waits for no more.
   */
  async stillness(quiet = 150): Promise<void> {
    const cameToRest = await this.page.evaluate(async (wanted) => {
      const drawn = (): number => {
        const info = window.pierglass?.rendererInfo() ?? null
        if (info === null) throw new Error('there is no 3D picture')
        return info.frames
      }
      const end = performance.now() + 240_000
      let [before, since, turns] = [drawn(), performance.now(), 0]
      while (performance.now() < end) {
        await new Promise(requestAnimationFrame)
        const now = drawn()
        if (now !== before) [before, since, turns] = [now, performance.now(), 0]
        else if (++turns >= 8 && performance.now() - since >= wanted) return true
      }
      return false
    }, quiet)
    if (!cameToRest) throw new Error('the picture never comes to rest')
  }

  /** The picture as it stands, as bytes. */
  async picture(): Promise<Buffer> {
    await this.stillness()
    return this.page.locator('canvas').first().screenshot()
  }

  /** How many points of two pictures differ for the eye: by more than 8 of 255 in any colour. */
  async differing(first: Buffer, second: Buffer): Promise<number> {
    const urls = [first, second].map((bytes) => `data:image/png;base64,${bytes.toString('base64')}`)
    return this.page.evaluate(async (sources) => {
      const pixels = await Promise.all(
        sources.map(async (source) => {
          const image = new Image()
          image.src = source
          await image.decode()
          const canvas = document.createElement('canvas')
          canvas.width = image.width
          canvas.height = image.height
          const context = canvas.getContext('2d')
          context?.drawImage(image, 0, 0)
          return context?.getImageData(0, 0, image.width, image.height).data ?? new Uint8ClampedArray()
        }),
      )
      const [a = new Uint8ClampedArray(), b = new Uint8ClampedArray()] = pixels
      if (a.length !== b.length) return Number.POSITIVE_INFINITY
      let count = 0
      for (let i = 0; i < a.length; i += 4) {
        const apart = Math.max(...[0, 1, 2].map((k) => Math.abs((a[i + k] ?? 0) - (b[i + k] ?? 0))))
        if (apart > 8) count++
      }
      return count
    }, urls)
  }

  /** The two pictures are the same for the eye: a few points on a rounded edge may differ. */
  async isSamePicture(first: Buffer, second: Buffer): Promise<boolean> {
    return (await this.differing(first, second)) < 60
  }

  /** Types into a field as a person does: replace all, Enter. */
  async enter(field: Locator, text: string): Promise<void> {
    await field.click()
    await field.fill(text)
    await field.press('Enter')
  }
}

/**
 * `allowed` lists complaints a test expects, by a part of their text; all others fail it. `graphics: false` is for tests that ask
 * nothing of the 3D picture: every page of theirs opens in a browser without WebGL2.
 */
export const test = base.extend<{ allowed: readonly string[]; graphics: boolean; app: App }>({
  allowed: [[], { option: true }],
  graphics: [true, { option: true }],
  app: async ({ page, baseURL, allowed, graphics }, use) => {
    const complaints = await watch(page, baseURL ?? '')
    if (!graphics) await takeAwayGraphics(page)
    await use(new App(page, complaints))
    expect(complaints.filter((complaint) => !allowed.some((part) => complaint.includes(part)))).toEqual([])
  },
})
