import type { jsPDF } from 'jspdf'
import bold from '@expo-google-fonts/source-sans-3/700Bold/SourceSans3_700Bold.ttf?url'
import half from '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf?url'
import regular from '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?url'
import { inBase64 } from '../../files/inBase64.ts'

/** The page's own letter in the three weights that the sheet uses, with every sign that the page's files leave to others. */
const files = { 400: regular, 600: half, 700: bold } as const
export type Weight = keyof typeof files
export const pdfFamily = 'Source Sans 3'

const weights: readonly Weight[] = [400, 600, 700]
export const weightOf = (weight: number): Weight => (weight >= 650 ? 700 : weight >= 550 ? 600 : 400)

export async function giveLetters(pdf: jsPDF): Promise<void> {
  for (const weight of weights) {
    const answer = await fetch(files[weight])
    if (!answer.ok) throw new Error('the letters of the sheet cannot be had')
    const name = `letters-${weight}.ttf`
    pdf.addFileToVFS(name, inBase64(new Uint8Array(await answer.arrayBuffer())))
    pdf.addFont(name, pdfFamily, 'normal', weight)
  }
}

type Glyphs = { characterToGlyph(code: number): number }

/** Does the letter that is set have a shape for every sign of the text? */
export function hasAll(pdf: jsPDF, text: string): boolean {
  const glyphs = Reflect.get(pdf.getFont(), 'metadata') as Glyphs
  return [...text].every((sign) => sign === ' ' || sign === '\u00a0' || glyphs.characterToGlyph(sign.codePointAt(0) ?? 0) > 0)
}
