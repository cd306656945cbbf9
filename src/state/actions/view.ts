import type { MistakeId } from '../../core/model/buildStep.ts'
import type { Cut } from '../../core/model/solid.ts'
import { radians, type UnitSystem } from '../../core/units/quantity.ts'
import type { Layer, LanguageId, Theme, Viewpoint, ViewSettings } from '../appState.ts'
import type { PierStore } from '../store.ts'

/** Widest sector that the cut may take out [rad]. */
export const widestCut = (300 * Math.PI) / 180
const fullTurn = 2 * Math.PI

const changeView = (store: PierStore, change: Partial<ViewSettings>): void =>
  store.setState((state) => ({ view: { ...state.view, ...change } }))

/** Opens the cut `open` wide, held between whole and the widest, facing the plan angle `facing`, brought into one turn. */
export const setCut = (store: PierStore, cut: Cut): void => {
  if (!Number.isFinite(cut.open) || !Number.isFinite(cut.facing)) return
  changeView(store, {
    cut: {
      open: radians(Math.min(widestCut, Math.max(0, cut.open))),
      facing: radians(((cut.facing % fullTurn) + fullTurn) % fullTurn),
    },
  })
}

/** Asks for a named viewpoint, also when it was the last one asked for. */
export const lookFrom = (store: PierStore, name: Viewpoint): void =>
  changeView(store, { viewpoint: { name, at: store.getState().view.viewpoint.at + 1 } })

export const setLayer = (store: PierStore, layer: Layer, shown: boolean): void =>
  changeView(store, { layers: { ...store.getState().view.layers, [layer]: shown } })

export const setCutPost = (store: PierStore, cutPost: boolean): void => changeView(store, { cutPost })

/** 0 together, 1 lifted apart. */
export const setExplode = (store: PierStore, explode: number): void => {
  if (Number.isFinite(explode)) changeView(store, { explode: Math.min(1, Math.max(0, explode)) })
}

/** Marks one zone, part or link in the picture and in the numbers; null marks none. */
export const pointAt = (store: PierStore, id: string | null): void => {
  if (store.getState().view.pointedAt !== id) changeView(store, { pointedAt: id })
}

/** Opens one link of the load path to be read; null closes the one that is open. */
export const openLink = (store: PierStore, id: string | null): void => {
  if (store.getState().view.openLink !== id) changeView(store, { openLink: id })
}

/** Pulls at the post with so much uplift [N], to look at; null lets go. A pull is never less than nothing. */
export const setPull = (store: PierStore, pull: number | null): void => {
  if (pull !== null && !Number.isFinite(pull)) return
  const next = pull === null ? null : Math.max(0, pull)
  if (store.getState().view.pull !== next) changeView(store, { pull: next })
}

/** Shows the pier with this mistake made, or without it. The document stays as it is. */
export const setMistake = (store: PierStore, id: MistakeId, isMade: boolean): void => {
  const { mistakes } = store.getState().view
  if (mistakes.includes(id) !== isMade) changeView(store, { mistakes: isMade ? [...mistakes, id] : mistakes.filter((one) => one !== id) })
}

/** Shows the pier as it is meant again. */
export const putRight = (store: PierStore): void => {
  if (store.getState().view.mistakes.length > 0) changeView(store, { mistakes: [] })
}

export const showPanel = (store: PierStore, panel: ViewSettings['panel']): void => changeView(store, { panel })

export const setUnits = (store: PierStore, units: UnitSystem): void => changeView(store, { units })
export const setTheme = (store: PierStore, theme: Theme): void => changeView(store, { theme })
export const setLanguage = (store: PierStore, language: LanguageId): void => changeView(store, { language })
export const setQuality = (store: PierStore, quality: ViewSettings['quality']): void => changeView(store, { quality })
