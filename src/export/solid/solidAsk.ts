import type { Role } from '../../core/model/solid.ts'
import type { ModelScale } from './modelFrame.ts'
import type { SolidPart } from './solidParts.ts'
import type { ModelWords } from './threeMf.ts'

/** Everything that a file of closed bodies is made from, as plain data that can be sent to a worker. */
export type SolidAsk = Readonly<{
  format: 'stl' | '3mf'
  parts: readonly SolidPart[]
  withPost: boolean
  scale: ModelScale
  words: ModelWords
  names: Readonly<Record<Role, string>>
}>

export type SolidAnswer = Readonly<{ ok: true; bytes: Uint8Array<ArrayBuffer> }> | Readonly<{ ok: false; why: string }>
