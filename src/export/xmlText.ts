/** Signs that XML 1.0 has no way to write, or no use for: controls but tab and line ends, halves of pairs, and two that are no characters. */
const unwritable = /[^\P{Cc}\t\n\r]|\p{Cs}|[\uFFFE\uFFFF]/gu

/** A text as it stands in an XML file, in an element or between quotes: markup becomes text. */
export const xmlText = (text: string): string =>
  text.replace(unwritable, '').replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
