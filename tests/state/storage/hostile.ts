/** Values that nothing of ours ever wrote. */
export const hostileValues: readonly unknown[] = [
  undefined,
  null,
  true,
  '',
  'x',
  '__proto__',
  '<img src=x onerror=alert(1)>',
  '\u202e',
  '\ud800',
  'x'.repeat(100_000),
  0,
  -0,
  -1,
  0.5,
  1e20,
  -1e20,
  8.64e15,
  8.64e15 + 1,
  Number.MAX_VALUE,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  [],
  [null],
  [1e308, -1e308],
  [[]],
  {},
  { toString: null },
  { length: 1e9 },
  { kind: 'pier' },
  new Date(0),
  new Date(Number.NaN),
  new Map([[1, 2]]),
  new Uint8Array(3),
  10n,
]

/** The same whole numbers for the same seed. */
export const dice = (seed: number): ((sides: number) => number) => {
  let state = seed
  return (sides) => {
    state = (state * 48271) % 2147483647
    return state % sides
  }
}

/** Every place in a piece of data, as the keys that lead there. */
export const placesIn = (data: unknown, path: readonly string[] = []): readonly (readonly string[])[] =>
  typeof data === 'object' && data !== null
    ? [path, ...Object.entries(data).flatMap(([key, value]) => placesIn(value, [...path, key]))]
    : [path]

/** The same data with another value at one place. */
export const withAt = (data: unknown, [key, ...rest]: readonly string[], value: unknown): unknown => {
  if (key === undefined) return value
  if (Array.isArray(data)) return data.map((one, i) => (String(i) === key ? withAt(one, rest, value) : one))
  return { ...(data as object), [key]: withAt((data as Readonly<Record<string, unknown>>)[key], rest, value) }
}
