/**
 * The page's own files, kept in the browser, so that it opens with the network off. It runs beside the page, answers for files of the
 * page's own folder and for nothing else, and a newer one waits until it is asked for or no tab is open.
 */
type Waiting = Event & Readonly<{ waitUntil: (work: Promise<unknown>) => void }>
type Asked = Event & Readonly<{ request: Request; respondWith: (answer: Promise<Response>) => void }>
type Keeper = Readonly<{
  registration: Readonly<{ scope: string }>
  clients: Readonly<{ claim: () => Promise<void> }>
  skipWaiting: () => Promise<void>
}>

/** Written in when the page is built: every file of it, and a mark of them all. */
declare const builtFiles: readonly string[]
declare const builtMark: string

const keeper = self as unknown as Keeper
const prefix = 'pierglass.page.'
/** A tab holds a lock of this name, and of the address of its script, for as long as it is open. */
const runningPrefix = 'pierglass.runs.'
const own = prefix + builtMark
const { scope } = keeper.registration
/** A host may send whoever asks for `index.html` on to its folder; the folder itself is what is kept. */
const pages = [scope, new URL('index.html', scope).href]
const anyHeaders = { ignoreVary: true }

/** All files or none: where one is missing or the disk is full, this keeper never starts and the page goes on from the network. */
const keepAll = async (): Promise<void> => {
  const kept = await caches.open(own)
  await kept.addAll(builtFiles.map((file) => new Request(new URL(file, scope), { cache: 'no-cache' })))
}

/** The scripts that open tabs run, each of one build; null where the browser can't tell. */
const runningScripts = async (): Promise<readonly string[] | null> => {
  const locks = navigator.locks as LockManager | undefined
  const held = (await locks?.query())?.held
  return held?.flatMap(({ name }) => (name?.startsWith(runningPrefix) ? [name.slice(runningPrefix.length)] : [])) ?? null
}

const holdsAny = async (cache: Cache, urls: readonly string[]): Promise<boolean> => {
  const found = await Promise.all(urls.map((url) => cache.match(url, anyHeaders)))
  return found.some((one) => one !== undefined)
}

/**
 * The files of every build that an open tab still runs stay, and those of the build before, whose tabs may not say that they run. What
 * another folder of this host keeps is left alone.
 */
const dropOld = async (): Promise<void> => {
  const running = await runningScripts()
  if (running === null) return
  const builds: (readonly [name: string, isRun: boolean])[] = []
  for (const name of await caches.keys()) {
    if (!name.startsWith(prefix) || name === own) continue
    const cache = await caches.open(name)
    if (await holdsAny(cache, pages)) builds.push([name, await holdsAny(cache, running)])
  }
  for (const [name, isRun] of builds.slice(0, -1)) if (!isRun) await caches.delete(name)
}

const answer = async (request: Request): Promise<Response> => {
  const { origin, pathname } = new URL(request.url)
  const isPage = request.mode === 'navigate' && pages.includes(origin + pathname)
  const mine = await caches.open(own)
  const found = (await mine.match(isPage ? scope : request.url, anyHeaders)) ?? (await caches.match(request.url, anyHeaders))
  return found ?? fetch(request)
}

self.addEventListener('install', (event) => (event as Waiting).waitUntil(keepAll()))
// The tab of a first visit is answered for too, as those that come after it.
self.addEventListener('activate', (event) => (event as Waiting).waitUntil(keeper.clients.claim().then(dropOld)))
self.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  if (data === 'take over') void keeper.skipWaiting()
})
self.addEventListener('fetch', (event) => {
  const { request, respondWith } = event as Asked
  if (request.method === 'GET' && request.url.startsWith(scope)) respondWith.call(event, answer(request))
})

export {}
