import Module, { type ManifoldToplevel } from 'manifold-3d'
import wasmAddress from 'manifold-3d/manifold.wasm?url'
import { solidFile } from './solidFile.ts'
import type { SolidAnswer, SolidAsk } from './solidAsk.ts'

/**
 * Runs by itself, for one file: loads the solid library, joins the parts that it is sent and writes the file. It asks for nothing but
 * the library's own code. A worker stands under the policy of its own file, so the page's need not allow code in this form.
 */
async function load(): Promise<ManifoldToplevel> {
  const wasm = await Module({ locateFile: () => wasmAddress })
  wasm.setup()
  return wasm
}

addEventListener('message', async ({ data }: MessageEvent<SolidAsk>) => {
  const answer = (said: SolidAnswer, transfer: Transferable[] = []): void => self.postMessage(said, { transfer })
  try {
    const bytes = solidFile(await load(), data)
    answer({ ok: true, bytes }, [bytes.buffer])
  } catch (error) {
    answer({ ok: false, why: error instanceof Error ? error.message : String(error) })
  }
})
