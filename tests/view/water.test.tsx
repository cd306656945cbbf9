// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { deriveMoisture } from '../../src/core/derive/moisture/deriveMoisture.ts'
import { fillKinds } from '../../src/core/kinds/index.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { editField, pickChoice } from '../../src/state/actions/edit.ts'
import { shownSpec } from '../../src/state/derived.ts'
import { pierStore } from '../../src/state/store.ts'
import { wordsOf } from '../../src/words/index.ts'
import { WaterPanel } from '../../src/view/panels/water/WaterPanel.tsx'
import { kindsOf } from '../../src/view/panels/water/WetnessList.tsx'
import { draw } from './page.ts'

const words = wordsOf('moisture')
let view: Awaited<ReturnType<typeof draw>> | null = null
const shown = async (): Promise<string> => {
  await view?.end()
  view = await draw(<WaterPanel />)
  return document.body.textContent ?? ''
}
const result = () => deriveMoisture(shownSpec(pierStore.getState()))
beforeEach(() => openDocument(pierStore, defaultDocument))
afterEach(async () => {
  await view?.end()
  view = null
})

describe('[P2] water against the wood in the answers', () => {
  it.each(fillKinds.map((kind) => kind.id))(
    '%s: each kind of stretch once, with class, air and reason; no percent of moisture',
    async (kind) => {
      pickChoice(pierStore, 'fill.kind', kind)
      const page = await shown()
      const items = [...document.querySelectorAll('.wet-list > li')].map((item) => item.textContent ?? '')
      const kinds = kindsOf(result().profile)
      expect(items).toHaveLength(kinds.length)
      kinds.forEach(({ first }, i) => {
        expect(items[i]).toContain(words.touches[first.touch])
        expect(items[i]).toContain(words.withAir(words.wetness[first.wetness], words.oxygen[first.oxygen]))
        expect(items[i]).toContain(words.reasons[first.reason])
        expect(items[i]).not.toContain('%')
      })
      expect(page).toContain(words.groundline[result().groundline.at])
      expect(page).toContain(result().top.path.end === 'post' ? words.top.post : words.top.ground)
    },
  )

  it('says why rain ends at the post, and how much a dish holds', async () => {
    pickChoice(pierStore, 'top.shape', 'dished')
    const page = await shown()
    expect(page).toContain(words.top.post)
    expect(page).toContain(words.top.reasons['top-slopes-in'])
    expect(page).toMatch(/The dish holds .*\d/)
  })

  it('shows what is said of concrete beside what was found, and of gravel only where there is gravel', async () => {
    const concrete = await shown()
    expect(concrete).toContain(words.traps['trap-concrete-rots-posts'])
    expect(concrete).toContain(words.traps['trap-concrete-protects-posts'])
    expect(concrete).toContain(words.said.missing)
    expect(concrete).not.toContain(words.traps['trap-gravel-drains-the-hole'])
    await view?.act(async () => pickChoice(pierStore, 'fill.kind', 'granular-on-pad'))
    expect(await shown()).toContain(words.traps['trap-gravel-drains-the-hole'])
  })

  it('opens no joint for wood that was set dry', async () => {
    editField(pierStore, 'water.atSetting', '10 %')
    expect(await shown()).toContain(words.joint.closed)
  })
})
