import { strToU8 } from 'fflate'
import type { PierDocument } from '../../../core/model/spec.ts'
import { defaultDocument } from '../../../core/spec/defaults.ts'
import { linkContent } from '../../../core/spec/linkContent.ts'
import { crc32 } from '../../../state/storage/link.ts'

/** Eight signs that tell one pier from another on paper: a check sum of its sizes. Its name, and how a size was typed, do not count. */
export const pierMark = ({ spec }: Pick<PierDocument, 'spec'>): string => {
  const sum = crc32(strToU8(linkContent({ ...defaultDocument, spec })))
    .toString(16)
    .toUpperCase()
    .padStart(8, '0')
  return `${sum.slice(0, 4)}-${sum.slice(4)}`
}
