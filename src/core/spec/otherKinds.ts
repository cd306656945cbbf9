import type { KindParts, OtherKind, PierDocument, PierSpec } from '../model/spec.ts'
import { isSameAt } from './path.ts'
import { validateSpec } from './validate.ts'

// Each fill, support and bracket keeps its own values while another is in use.

type Of = OtherKind['of']
type Parts = OtherKind['pier']

const partKeys: readonly (keyof KindParts)[] = ['support', 'fill', 'bars', 'verticalBars', 'top']

const idOf: Readonly<Record<Of, (pier: Parts) => string | undefined>> = {
  fill: ({ fill }) => fill?.kind,
  support: ({ support }) => support?.kind,
  bracket: ({ support }) => (support?.kind === 'bracket' ? support.bracket.kind : undefined),
}

/** What a kind had when it was last in use. */
export const otherKind = (others: readonly OtherKind[], of: Of, id: string): OtherKind | undefined =>
  others.find((one) => one.of === of && idOf[of](one.pier) === id)

/** Does what is placed end below the post's foot? Such a post is set down on the bottom, unless somebody has left it so. */
export const endsBelowPost = (spec: PierSpec): boolean => validateSpec(spec).some((issue) => issue.code === 'fill-without-post')

const isAlike = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b)
const belongsTo = (path: string, pier: Parts): boolean =>
  partKeys.some((key) => key in pier && (path === key || path.startsWith(`${key}.`)))
const under = <T>(entries: Readonly<Record<string, T>>, pier: Parts): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(entries).filter(([path]) => belongsTo(path, pier)))

/** Which parts a kind takes along when another comes into its place; null when it has nothing that would not come by itself. */
const taken: Readonly<Record<Of, (was: PierSpec, is: PierSpec) => Parts | null>> = {
  fill: (was, is) => {
    const goes = (key: keyof KindParts) => !isAlike(was[key], is[key]) || (key === 'support' && endsBelowPost(was))
    const going = partKeys.filter((key) => key === 'fill' || goes(key))
    const hasNothing = going.length === 1 && Object.keys(was.fill).length === 1
    return hasNothing ? null : Object.fromEntries(going.map((key) => [key, was[key]]))
  },
  support: ({ support, bars }) => ({ support, bars }),
  bracket: ({ support }) => ({ support }),
}

/** The kinds that are not in use once `spec` takes the place of the document's, with what each had. */
export function otherKindsAfter({ spec: was, written, origins, otherKinds }: PierDocument, spec: PierSpec): readonly OtherKind[] {
  const left = (Object.keys(idOf) as Of[]).filter((of) => {
    const [before, now] = [idOf[of](was), idOf[of](spec)]
    return before !== undefined && now !== undefined && before !== now
  })
  if (left.length === 0) return otherKinds
  const inUse = ({ of, pier }: OtherKind): boolean =>
    idOf[of](pier) === idOf[of](spec) || (left.includes(of) && idOf[of](pier) === idOf[of](was))
  const added = left.flatMap((of): readonly OtherKind[] => {
    const pier = taken[of](was, spec)
    return pier === null ? [] : [{ of, pier, written: under(written, pier), origins: under(origins, pier) }]
  })
  return [...otherKinds.filter((one) => !inUse(one)), ...added]
}

/** Texts and origins that came back with values of kinds that are in use again. */
export function broughtBack({ otherKinds }: PierDocument, spec: PierSpec): Pick<OtherKind, 'pier' | 'written' | 'origins'> {
  const back = otherKinds.filter(({ of, pier }) => idOf[of](pier) === idOf[of](spec))
  const pier: Parts = Object.assign({}, ...back.map((one) => one.pier))
  const same = <T>(entries: Readonly<Record<string, T>>) => Object.entries(entries).filter(([path]) => isSameAt(pier, spec, path))
  return {
    pier,
    written: Object.fromEntries(back.flatMap((one) => same(one.written))),
    origins: Object.fromEntries(back.flatMap((one) => same(one.origins))),
  }
}
