/** As many whole words of a text as fit, with three dots where some are left out; a single word longer than that is cut. */
export function shortened(text: string, most: number): string {
  if (text.length <= most) return text
  const cut = text.slice(0, most)
  const end = cut.search(/\s\S*$/)
  return `${(end > 0 ? cut.slice(0, end) : cut).trimEnd()} …`
}
