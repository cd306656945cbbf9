import type { Standing } from '../../core/model/worked.ts'

/** How well a number was checked: a short word for the mark, and what it means. `null`: no mark is needed. */
export const standings: Readonly<Record<Standing, Readonly<{ mark: string | null; meaning: string }>>> = {
  definition: { mark: null, meaning: 'True by definition, or plain geometry.' },
  read: { mark: null, meaning: 'The words or figures of the source itself were read.' },
  'published, recomputed': { mark: 'Recomputed', meaning: 'A published figure that was worked out again and agreed.' },
  'computed here': { mark: 'Worked out here', meaning: 'Worked out for this tool from the inputs shown. Not a published result.' },
  'abstract only': { mark: 'Summary only', meaning: 'Only the summary of the source was read.' },
  secondary: { mark: 'Second hand', meaning: 'Read in another text that quotes the source. Check the source before you rely on it.' },
  'common practice': { mark: 'Common practice', meaning: 'Common practice in the trade. No source.' },
  'from memory': { mark: 'From memory', meaning: 'From memory. Not checked against print.' },
  'assumed here': { mark: 'Assumed', meaning: 'Assumed for this tool, or entered by you.' },
}
