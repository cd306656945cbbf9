export type PaperName = 'letter' | 'a4'

/** Margins that leave 180 by 254 mm on either paper. */
const rules: Readonly<Record<PaperName, string>> = {
  letter: '@page { size: 215.9mm 279.4mm; margin: 12.7mm 17.95mm; }',
  a4: '@page { size: 210mm 297mm; margin: 21.5mm 15mm; }',
}

/** Tells the browser's printing which paper to take; gives a function that takes it back. */
export function takePaper(name: PaperName): () => void {
  const style = new CSSStyleSheet()
  style.replaceSync(rules[name])
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, style]
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== style)
  }
}

/** Where Letter is the paper at hand. */
export const usualPaper = (language: string): PaperName => (/-(US|CA|MX|PH|CL|CO)$/i.test(language) ? 'letter' : 'a4')
