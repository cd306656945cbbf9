import type { IssueCode } from '../../core/spec/issueCodes.ts'

/** Facts of an issue, made ready to read: `field` is its label, `got` and `limit` are in the reader's units. */
export type IssueFacts = Readonly<{ field: string; got: string; limit: string }>

type Sentence = (facts: IssueFacts) => string

/** One or two short sentences for each code: what is wrong, the value, and the limit. */
export const issues: Readonly<Record<IssueCode, Sentence>> = {
  empty: ({ field }) => `${field} is empty. Type a value.`,
  'too-long': ({ field, limit }) => `${field}: that is too much text for a value (${limit} characters at most).`,
  'not-a-number': ({ field, got, limit }) => `${field}: "${got}" can't be read as a value. ${limit || `Try 18, 18 in, 1'-6" or 0.457 m.`}`,
  'not-finite': ({ field }) => `${field}: that number is too big to work with.`,
  'missing-unit': ({ field, got, limit }) => `${field}: "${got}" has no unit. Write one of ${limit}.`,
  'unknown-unit': ({ field, got }) => `${field}: the unit in "${got}" is not known here.`,
  'wrong-unit': ({ field, got, limit }) => `${field}: "${got}" has a unit of another kind. Use one of ${limit}.`,
  'two-units': ({ field, got }) => `${field}: "${got}" gives the value twice. Keep one.`,
  'not-whole': ({ field, got }) => `${field} must be a whole number. You entered ${got}.`,

  'below-minimum': ({ field, got, limit }) => `${field} can't be less than ${limit}. You entered ${got}.`,
  'above-maximum': ({ field, got, limit }) => `${field} can't be more than ${limit}. You entered ${got}.`,
  'next-to-nothing': ({ field, got, limit }) => `${field}: ${got} is next to nothing. Use 0, or ${limit} at least.`,
  'not-a-choice': ({ field, got, limit }) => `${field}: "${got}" is not one of the choices: ${limit}.`,
  'not-a-field': ({ got }) => `"${got}" is not an input of this pier.`,

  'file-unreadable': () => 'The file could not be read. A folder can’t be opened; is the file still there?',
  'file-too-large': ({ got, limit }) => `The file is too large for a job file: ${got} bytes, and ${limit} is the most.`,
  'file-too-deep': ({ got, limit }) => `The file is nested too deep: ${got} levels, and ${limit} is the most.`,
  'not-json': ({ got }) => `The file is not a job file. Reading stopped at ${got}.`,
  'not-a-job': () => 'The file holds data, but it is not a job file of this tool.',
  'newer-schema': ({ got, limit }) => `The file comes from a newer version (${got}). This page reads up to ${limit}.`,
  'unknown-schema': ({ got }) => `The file says version ${got}, which never existed.`,
  'unknown-key': ({ field }) => `${field} is not a name that a job file uses.`,
  'forbidden-key': ({ field }) => `${field} is a name that no job file may hold.`,
  'duplicate-key': ({ field }) => `${field} stands in the file twice.`,
  missing: ({ field }) => `${field} is missing.`,
  'wrong-type': ({ field, got, limit }) => `${field} should be ${limit}, but it is ${got}.`,
  'text-too-long': ({ field, got, limit }) => `${field} is too long: ${got} characters, and ${limit} is the most.`,
  'support-mismatch': ({ got, limit }) => `This fill method needs a post that is "${limit}", but it is "${got}".`,

  'link-too-short': ({ got, limit }) => `The link was cut off: ${got} characters, and at least ${limit} are needed.`,
  'link-version': ({ got, limit }) => `The link comes from a newer version (${got}). This page reads up to ${limit}.`,
  'link-alphabet': ({ got }) => `The link holds a character that no link has: "${got}".`,
  'link-checksum': () => 'The link was changed on its way: its check does not agree.',
  'link-content': () => 'The link is whole, but it does not hold a pier.',

  'layers-out-of-order': ({ field, got, limit }) =>
    `${field}: the second layer must start below the topsoil (${limit}). You entered ${got}.`,
  'factor-beyond-custom': ({ field, got, limit }) =>
    `${field}: ${got} is beyond ${limit}, the custom. Switch on “Factors beyond 0.8 to 1.2” first if you can say why.`,
  'years-out-of-order': ({ field, got, limit }) => `${field}: ${got} is longer than the longest life entered (${limit}).`,
  'holes-run-together': ({ field, got, limit }) => `${field}: at ${got} the two holes run into each other. ${limit} is the least.`,
  'slope-uses-downhill-depth': ({ got, limit }) =>
    `The ground slopes ${got}, more than ${limit}. Depths are checked at the downhill edge, where the hole is least deep.`,
  'slope-needs-engineer': ({ got, limit }) => `The ground slopes ${got}, more than ${limit}. Ask an engineer about this slope.`,
  'topsoil-to-the-bottom': ({ got, limit }) => `The topsoil (${got}) is as deep as the hole (${limit}). No load should rest on topsoil.`,

  'bell-not-wider': ({ field, got, limit }) => `${field}: a bell of ${got} is not wider than the hole (${limit}).`,
  'bell-too-high': ({ field, got, limit }) => `${field}: ${got} leaves no straight hole above the bell. Keep it under ${limit}.`,
  'flare-not-wider': ({ field, got, limit }) => `${field}: a mouth of ${got} is not wider than the hole (${limit}).`,
  'flare-too-deep': ({ field, got, limit }) => `${field}: ${got} reaches the bell or the bottom. Keep it under ${limit}.`,
  'base-too-thick': ({ field, got, limit }) => `${field}: a layer of ${got} fills the whole hole (${limit} deep).`,
  'grade-meets-bell': ({ field, got, limit }) =>
    `${field}: on the downhill side the ground comes down to the bell. Bell ${got}, ${limit} at most.`,
  'grade-meets-flare': ({ field, got, limit }) =>
    `${field}: on the downhill side the ground comes down below the mouth. Mouth ${got} deep, ${limit} at least.`,
  'grade-meets-base': ({ field, got, limit }) =>
    `${field}: on the downhill side the ground comes down to the bottom. Depth ${got}, ${limit} at least.`,
  'frost-below-bearing': ({ got, limit }) => `The pier bears ${got} below the downhill edge. Frost reaches ${limit}.`,

  'post-wider-than-hole': ({ got, limit }) => `The post is ${got} across its corners. The hole is only ${limit} wide.`,
  'post-clearance': ({ got, limit }) =>
    `The hole is only ${got} wider than the post from corner to corner. The code asks for ${limit} where concrete or sand goes in.`,
  'post-too-short': ({ field, got, limit }) => `${field}: at ${got} the post ends inside the pier. It needs at least ${limit}.`,
  'post-leans-into-wall': ({ field, got, limit }) =>
    `${field}: leaning ${got}, the post runs into the wall of the hole. ${limit} is the most here.`,
  'foot-below-base': ({ field, got, limit }) => `${field}: ${got} is inside the layer at the bottom, which is ${limit} high.`,
  'foot-above-grade': ({ field, got, limit }) => `${field}: at ${got} the post would not stand in the hole. ${limit} is the most.`,
  'post-not-treated-for-ground': ({ got, limit }) => `The post is marked ${got}. Posts of buildings set in the ground call for ${limit}.`,

  'collar-too-high': ({ field, got, limit }) => `${field}: ${got} comes out of the ground on the downhill side. ${limit} is the most.`,
  'pad-too-thick': ({ field, got, limit }) => `${field}: a pad of ${got} leaves no room for the post. Keep it under ${limit}.`,
  'fill-overflows': ({ got, limit }) => `These bags make ${got}. The hole round the post takes only ${limit}.`,
  'fill-without-post': () => 'The dry mix ends below the foot of the post, so it does not touch the post.',
  'backfill-not-listed': () => 'Native soil thrown back is not one of the fills that the code lists for a hole round a post.',
  'dry-mix-not-verifiable': () => "The strength of mix placed dry can't be verified. Cores would show it.",
  'strength-low': ({ got, limit }) => `Concrete of ${got} is under ${limit}, the least that a standard names.`,

  'bars-with-bracket': () => 'A pier with a bracket has no post in the concrete, so there is nothing to put a bar through.',
  'bar-longer-than-hole': ({ got, limit }) => `A bar of ${got} does not fit in a hole ${limit} wide.`,
  'bar-cover': ({ got, limit }) => `A bar of ${got} leaves less than 3 in of concrete at its ends. ${limit} is the longest that does.`,
  'bar-inside-post': ({ got, limit }) => `A bar of ${got} does not come out of the post, which is ${limit} wide.`,
  'bar-stub-short': ({ got, limit }) => `A bar of ${got} sticks out less than 2 in on each side of the post. ${limit} would do.`,
  'bar-below-foot': ({ got, limit }) => `A bar ${got} above the foot is not inside the post. It needs at least ${limit}.`,
  'bar-above-top': ({ got, limit }) => `The highest bar is ${got} above the foot. The finished top there is at ${limit}.`,
  'bar-outside-mix': ({ got, limit }) => `A bar ${got} above the foot is in soil. The mix ends at ${limit}.`,
  'bars-overlap': ({ got, limit }) => `Bars ${got} apart touch each other. They need at least ${limit}.`,

  'vertical-bars-without-concrete': () => 'This fill method puts no concrete round upright bars.',
  'vertical-bars-meet-post': ({ got, limit }) =>
    `There is no room between post and upright bars: they stand ${got} from the middle and need ${limit}.`,
  'vertical-bars-crowded': ({ got, limit }) => `The upright bars are only ${got} apart. They need ${limit}.`,
  'vertical-bars-too-short': ({ got, limit }) => `Only ${got} is left for the upright bars. They need ${limit}.`,

  'bracket-too-deep': ({ got, limit }) => `Bracket steel ${got} deep reaches the bottom of the concrete (${limit}).`,
  'bracket-cover': ({ got, limit }) =>
    `Bracket steel ${got} deep leaves less than 3 in of concrete below it. ${limit} is the most that does.`,
  'bracket-wider-than-pier': ({ got, limit }) => `The bracket needs a level landing of ${got} from the middle. The pier gives ${limit}.`,

  'reason-too-short': ({ limit }) => `Say in at least ${limit} characters why this resistance may be used.`,

  'rim-too-low': ({ got, limit }) => `With its rim at ${got} the top would end too low. ${limit} is the least.`,
  'crown-too-steep': ({ got, limit }) => `A rise of ${got} makes the crown steeper than 1 in 1. ${limit} is the most.`,
  'dish-too-deep': ({ got, limit }) => `A dish ${got} deep reaches the foot of the post. ${limit} is the most.`,
}
