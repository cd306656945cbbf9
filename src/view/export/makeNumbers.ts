import { fileName } from '../../export/fileName.ts'
import { resultCsv } from '../../export/numbers/resultCsv.ts'
import { resultJson } from '../../export/numbers/resultJson.ts'
import type { AppState } from '../../state/appState.ts'
import { meantResult, shownDocument } from '../../state/derived.ts'
import type { FileWish } from './fileWish.ts'
import type { MadeFile } from '../files/handOver.ts'

/** What `calc` prints of the same pier. */
const plainResult = (state: AppState): unknown => {
  const result = meantResult(state)
  return resultJson(shownDocument(state), { ...result, issues: [] }, result.issues)
}

export const makeJson = async ({ state }: FileWish): Promise<MadeFile> => ({
  name: fileName(shownDocument(state).name, 'numbers', 'json'),
  blob: new Blob([`${JSON.stringify(plainResult(state), null, 2)}\n`], { type: 'application/json' }),
})

export const makeCsv = async ({ state }: FileWish): Promise<MadeFile> => ({
  name: fileName(shownDocument(state).name, 'numbers', 'csv'),
  blob: new Blob([resultCsv(plainResult(state))], { type: 'text/csv' }),
})
