import katex from 'katex'
import 'katex/dist/katex.min.css'

/** Sets a formula into a node: as mathematics for the eye, and as MathML for whoever listens. Bad TeX is shown as it is. */
export const setMath = (tex: string, node: HTMLElement, block: boolean): void =>
  katex.render(tex, node, { output: 'htmlAndMathml', throwOnError: false, displayMode: block })
