import type { Word } from '../fields/node.ts'
import type { Field } from '../model/field.ts'
import type { PierDocument } from '../model/spec.ts'
import { fieldBy } from './fields.ts'
import { valueAt } from './path.ts'
import { shortText } from './writeJob.ts'

/**
 * Keys in the order in which released links say them. Any order opens the same pier; this one stays, since the mark on a drawing is reckoned
 * from a link's text. Keys that came later follow by the alphabet.
 */
const releasedOrder = [
  'fk bk sk sl lk hb hf hg tb vb sc sg sa so sb sp sf st lf lc lg la lo lb lp ls ss sd sw sr hd hh bd bh fd fh gm gt ps pw pt ph pl pf',
  'bs bp bb bc be fn fb fc fp ts tn tf tp tl tg tc vs vn vo vg vc us ur um uh cs cu cb cw np sn sh sx ns wg wt cd br cc xa xb xc le lu',
  'ld lt lh ee er ef es eb eo ea eh ed ev ex el et em ei ew qq qd qh qs qm qe qb qz qp qt qk qu qf qc qi qj ja jb jc jd je jf jg jh ji',
  'jj ma mb mc md me mf mg mh mi ia ib ic id ie if ig ih ij ik il im in ya yb yc yd ye yf yg yh yi yj yk yl za zb zc zd ze zf zg zh zi',
  'zj zk zl ka kb kc kd ke oa ra ob rb oc rc od rd oe re of rf og rg',
].flatMap((line) => line.split(' '))
const rank = ({ link }: Field): number => (releasedOrder.includes(link) ? releasedOrder.indexOf(link) : releasedOrder.length)

/** Every field once, in the order of a link. */
export const linkedFields: readonly Field[] = [...fieldBy.values()].sort((a, b) => rank(a) - rank(b) || (a.link < b.link ? -1 : 1))

/** What a link would say of one field, silent value or not; undefined when this pier has no such field. '=' marks a text not typed. */
function wordFor({ spec, written }: PierDocument, field: Field): Word | undefined {
  const value = valueAt(spec, field.path)
  if (value === undefined) return undefined
  if (field.type === 'part') return value === null ? 0 : 1
  if (typeof value !== 'number' || field.type === 'choice' || field.quantity === 'count') return value as Word
  return written[field.path] ?? `=${shortText(value, field.quantity)}`
}

/** The pier, without name and note, as a short text: a flat list of keys and values that differ from the silent ones. */
export function linkContent(document: PierDocument): string {
  const words = linkedFields.flatMap((field): Word[] => {
    const word = wordFor(document, field)
    return word === undefined || word === field.silent || word === `=${field.silent}` ? [] : [field.link, word]
  })
  return JSON.stringify(words)
}
