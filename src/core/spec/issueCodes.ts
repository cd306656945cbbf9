/**
 * Every code that an `Issue` from this folder may carry. The text table has one entry per code; `got` and `limit` are
 * SI numbers of `quantity` where a quantity is named, else plain text or counts.
 */
export const issueCodes = [
  // Reading one value. `got` is the text as typed.
  'empty', // nothing but spaces
  'too-long', // more than 64 characters (limit)
  'not-a-number', // cannot be read
  'not-finite', // NaN, Infinity, or a number beyond every double
  'missing-unit', // a bare number where a unit is required; limit: units that may be written
  'unknown-unit', // a unit nobody here knows
  'wrong-unit', // a unit of another kind of quantity; limit: units that may be written
  'two-units', // "18 in 457 mm"
  'not-whole', // a count with a fraction

  // Bounds and choices of one field.
  'below-minimum', // got, limit, quantity
  'above-maximum', // got, limit, quantity
  'next-to-nothing', // a length that is not 0 but thinner than can be built; got, limit: the least that is not 0
  'not-a-choice', // got: as given; limit: the choices, comma between
  'not-a-field', // an edit names a path that does not exist or is not shown for this pier; got: the path

  // The job file as a whole.
  'file-unreadable', // a folder, a file that is gone or locked, or no answer from the host
  'file-too-large', // got, limit: bytes of text
  'file-too-deep', // got, limit: levels of nesting
  'not-json', // got: where the reader stopped, line:column
  'not-a-job', // JSON, but without the "pierglass" version number
  'newer-schema', // got: its version; limit: the newest this version reads
  'unknown-schema', // a version number that was never released
  'unknown-key', // path: the key; nothing of ours has that name
  'forbidden-key', // __proto__, constructor, prototype
  'duplicate-key', // the same key twice in one object
  'missing', // a required key is not there
  'wrong-type', // got: what is there; limit: what should be
  'text-too-long', // name or note; got, limit: characters
  'support-mismatch', // path support.kind; got: the support; limit: the support the fill needs

  // The link. Path is empty.
  'link-too-short', // got, limit: characters
  'link-version', // got: version found; limit: newest known
  'link-alphabet', // a character that no link has; got: that character
  'link-checksum', // damaged on the way
  'link-content', // whole, but not a pier of ours

  // Site.
  'factor-beyond-custom', // life.factors.*: outside 0.8 to 1.2 and not asked for; got, limit
  'years-out-of-order', // life.own.low: longer than life.own.high (limit)
  'layers-out-of-order', // site.lower.from: not below the topsoil (limit)
  'holes-run-together', // spacing: closer than the hole, its bell or mouth is wide (limit: least spacing)
  'slope-uses-downhill-depth', // warning: slope over 10 % (limit)
  'slope-needs-engineer', // warning: slope over 1 in 3 (limit)
  'topsoil-to-the-bottom', // warning: topsoil as deep as the hole (limit)

  // Hole.
  'bell-not-wider', // hole.bell.diameter: not wider than the shaft (limit)
  'bell-too-high', // hole.bell.height: leaves no shaft above it (limit)
  'flare-not-wider', // hole.flare.diameter: not wider than the shaft (limit)
  'flare-too-deep', // hole.flare.depth: reaches the bell or the bottom (limit)
  'base-too-thick', // hole.base.thickness: as thick as the hole is deep (limit)
  'grade-meets-bell', // hole.bell.height: below the downhill edge grade comes down to the bell (limit: highest bell)
  'grade-meets-flare', // hole.flare.depth: grade comes down to the narrow end of the flare (limit: least depth of the flare)
  'grade-meets-base', // hole.depth: grade comes down to the gravel, pad or bottom (limit: least depth)
  'frost-below-bearing', // warning, hole.depth: bearing depth at the downhill edge (got) is less than the frost depth (limit)

  // Post and support.
  'post-wider-than-hole', // post.section: its diagonal or diameter (got) against the hole's diameter (limit)
  'post-clearance', // warning, hole.diameter: hole less post diagonal (got) is under 4 in (limit) for a concrete or sand fill
  'post-too-short', // post.heightAboveGrade: ends below the finished top or the bracket (limit: least height)
  'post-leans-into-wall', // post.lean: the post would stand in the wall of the hole (got, limit: angle)
  'foot-below-base', // support.foot: lower than the top of gravel, pad or footing (limit: least height)
  'foot-above-grade', // support.foot: the foot would stand at or above grade or the finished top (limit: greatest height)
  'post-not-treated-for-ground', // warning, post.treatment: below UC4B (limit) in the ground

  // Fill.
  'collar-too-high', // fill.height: above grade at the downhill edge (limit: greatest height)
  'pad-too-thick', // fill.pad: leaves no room for a post in the hole (limit)
  'fill-overflows', // fill.bags: the bags placed come up above grade (got, limit: volume)
  'fill-without-post', // warning, fill.bags: the mix ends below the post's foot
  'backfill-not-listed', // warning, fill.kind: native soil is not one of the code's ways to fill the hole round a post
  'dry-mix-not-verifiable', // warning, fill.kind: strength of mix placed dry cannot be verified
  'strength-low', // warning, concrete.strength: under the least strength a standard names (limit)

  // Bars through the post.
  'bars-with-bracket', // bars: a pier with a bracket has no post to put a bar through
  'bar-longer-than-hole', // bars.length: longer than the hole is wide (limit)
  'bar-cover', // warning, bars.length: leaves less than 3 in of cover at each end (limit: longest bar)
  'bar-inside-post', // bars.length: does not come out of the post (limit: the post's width)
  'bar-stub-short', // warning, bars.length: less than 2 in beyond each face of the post (limit: least length)
  'bar-below-foot', // bars.aboveFoot: not inside the post (limit: least height)
  'bar-above-top', // bars.aboveFoot or bars.count: the highest bar is not below the finished top at its ends (got, limit: height above the foot)
  'bar-outside-mix', // warning, bars.aboveFoot: a bar is in soil, above the concrete or dry mix (got, limit: height above the foot)
  'bars-overlap', // bars.spacing: bars touch (limit: least spacing)

  // Vertical bars.
  'vertical-bars-without-concrete', // verticalBars: this way of filling places no concrete over their length
  'vertical-bars-meet-post', // verticalBars.cover: no room between post and bars (got: radius of the ring; limit: least radius)
  'vertical-bars-crowded', // verticalBars.count: bars overlap (got: clear space; limit)
  'vertical-bars-too-short', // verticalBars: too little height left between covers (got, limit: length)

  // Bracket.
  'bracket-too-deep', // support.bracket.embedment: reaches the bottom of the concrete (limit)
  'bracket-cover', // warning, support.bracket.embedment: less than 3 in of concrete under the steel (limit)
  'bracket-wider-than-pier', // support.bracket.kind: needs a wider landing (got, limit: radius)

  // The reason for a soil mechanism. `got`, `limit`: characters.
  'reason-too-short',

  // Top.
  'rim-too-low', // top.rim: the finished top would end at or below the foot, the base or the collar (limit: lowest rim)
  'crown-too-steep', // top.rise: steeper than 1 in 1 (limit: greatest rise)
  'dish-too-deep', // top.rise: the dish reaches the foot or the bottom (limit: greatest depth)
] as const

export type IssueCode = (typeof issueCodes)[number]

/** Longest piece of foreign text that an issue repeats [characters]. */
export const longestShown = 80

/** Any value of a document as a short text for an issue. Never throws, whatever the value calls itself. */
export const shown = (value: unknown): string =>
  (typeof value === 'string' ? value : (JSON.stringify(value) ?? 'undefined')).slice(0, longestShown)
