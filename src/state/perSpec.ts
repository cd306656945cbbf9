/** Of the `most` keys that were asked for last, what belongs to each. */
const lately = <K, V>(most: number) => {
  const all = new Map<K, V>()
  return {
    get: (key: K): V | undefined => {
      const value = all.get(key)
      if (value !== undefined && all.delete(key)) all.set(key, value)
      return value
    },
    set: (key: K, value: V): void => {
      all.set(key, value)
      for (const oldest of all.keys()) {
        if (all.size <= most) return
        all.delete(oldest)
      }
    },
  }
}

/**
 * `derive`, worked out once for each spec, or whatever else it is of, for as long as somebody holds that very object: the same object
 * gives the same answer.
 * @param most where an answer is large: only so many of them are kept, those that were asked for last
 */
export const perSpec = <K extends object, T>(derive: (spec: K) => T, most?: number): ((spec: K) => T) => {
  const kept = most === undefined ? new WeakMap<K, Readonly<{ value: T }>>() : lately<K, Readonly<{ value: T }>>(most)
  return (spec) => {
    const before = kept.get(spec)
    if (before) return before.value
    const value = derive(spec)
    kept.set(spec, { value })
    return value
  }
}
