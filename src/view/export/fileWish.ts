import type { ModelScale } from '../../export/solid/modelFrame.ts'
import type { AppState } from '../../state/appState.ts'
import type { Words } from '../../words/index.ts'

export type FileId = keyof Words['takeAlong']['files']

/** What a person may choose before a file is made. */
export type FileChoices = Readonly<{
  withPost: boolean
  scale: ModelScale
  /** Of the picture [px]. */
  width: number
  withWords: boolean
}>

export const pictureWidths = [1280, 1920, 2560, 3840] as const
export const firstChoices: FileChoices = { withPost: true, scale: 1, width: 1920, withWords: true }

export type FileWish = Readonly<{ state: AppState; choices: FileChoices; date: string; version: string }>
