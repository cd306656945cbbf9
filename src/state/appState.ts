import type { MistakeId } from '../core/model/buildStep.ts'
import type { Cut } from '../core/model/solid.ts'
import type { Issue } from '../core/model/issue.ts'
import type { PierDocument } from '../core/model/spec.ts'
import type { UnitSystem } from '../core/units/quantity.ts'
import type { Opened } from './document/opened.ts'

export type Viewpoint = 'section' | 'three-quarter' | 'uphill' | 'downhill' | 'plan' | 'close-up'
export type Layer = 'soil' | 'labels' | 'dimensions' | 'water' | 'frost' | 'wetness'
export type Theme = 'paper' | 'dark'
/** Languages that the page speaks. */
export type LanguageId = 'en'

/** A moment that is looked at: a step of building it (from 0), a day of its first month, or a year. */
export type Moment =
  | Readonly<{ stretch: 'build'; step: number }>
  | Readonly<{ stretch: 'month'; day: number }>
  | Readonly<{ stretch: 'years'; year: number }>
export type Stretch = Moment['stretch']

/** What is looked at and how. Never part of undo, never saved with the pier. */
export type ViewSettings = Readonly<{
  units: UnitSystem
  theme: Theme
  language: LanguageId
  cut: Cut
  /** Asked-for viewpoint; `at` rises by one with each request so that the same one can be asked for twice. */
  viewpoint: Readonly<{ name: Viewpoint; at: number }>
  layers: Readonly<Record<Layer, boolean>>
  /** False: post, bars and bolts stay whole where the cut runs through them. */
  cutPost: boolean
  /** 0 together … 1 lifted apart. */
  explode: number
  /** Zone, part or link pointed at, from the picture or from the numbers. */
  pointedAt: string | null
  /** Link of the load path that is open to be read, by the id of its check; null for none. */
  openLink: string | null
  /** Uplift that is pulled at the post to see what happens [N]: no load of the document, null while nobody pulls. */
  pull: number | null
  /** Moment on show; null for the pier as it is built, at no moment. */
  time: Moment | null
  /** Does the moment move on by itself? */
  playing: boolean
  /** What is shown as done wrong. The document holds the pier as it is meant. */
  mistakes: readonly MistakeId[]
  /** Which of the two panels stands beside or under the picture where there is no room for both. */
  panel: 'inputs' | 'answers'
  /** `light`: plain materials, no shadows, no multisampling; for tests and weak machines. */
  quality: 'full' | 'light'
}>

/** What the page of a pier keeps beside the open document. */
export type PageState = Readonly<{
  /** A pier that came with a link and is only looked at; the open one waits behind it. Null for none. */
  looking: PierDocument | null
  /** Valid document while a drag is going on. */
  draft: PierDocument | null
  /** What was last entered and refused: the picture stays on `document`, these say why. */
  refused: readonly Issue[]
  /** Entries refused, by the path they were typed at; the text stays in its box until it is put right or dropped. */
  entries: Readonly<Record<string, RefusedEntry>>
  /** What the shell has to say: storage trouble, a damaged link, a file that would not open. */
  notices: readonly Notice[]
  view: ViewSettings
}>

/**
 * The whole application state. It holds documents, never results: `state/derived.ts` keeps those by spec.
 * A drag writes `draft` at most once a frame; release commits one document, clears the draft, and is one undo step.
 */
export type AppState = Opened<PierDocument> & PageState

/** `text` is null when the value was dragged: the box goes on showing the last good value. */
export type RefusedEntry = Readonly<{ text: string | null; issues: readonly Issue[] }>

/** One notice of a kind at a time; the words are made from `code` in src/words. */
export type Notice = Readonly<{
  code:
    | 'storage-blocked'
    | 'storage-full'
    | 'note-damaged'
    | 'link-damaged'
    | 'pier-set-aside'
    | 'changed-elsewhere'
    | 'file-refused'
    | 'file-opened'
    | 'numbers-moved'
    | 'link-copied'
    | 'copy-refused'
    | 'scene-failed'
    | 'no-webgl'
    | 'newer-page'
  issues?: readonly Issue[]
  /** A name or a raw text that belongs to the notice: a file's name, the damaged note. */
  detail?: string
}>
export type NoticeCode = Notice['code']
