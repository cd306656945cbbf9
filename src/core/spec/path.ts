/** Own keys only: a path of a document can never reach into a prototype. */
const own = (node: unknown, key: string): unknown =>
  typeof node === 'object' && node !== null && Object.hasOwn(node, key) ? (node as Readonly<Record<string, unknown>>)[key] : undefined

/** What stands at a dotted path ('hole.bell.diameter'); undefined when any step is missing. */
export const valueAt = (root: unknown, path: string): unknown => path.split('.').reduce(own, root)

/** Do two documents hold the same value at a path? Of two objects it counts that both are there. */
export function isSameAt(a: unknown, b: unknown, path: string): boolean {
  let [left, right] = [a, b]
  for (const key of path.split('.')) {
    if (left === right) return true
    left = own(left, key)
    right = own(right, key)
  }
  const isObject = (value: unknown) => typeof value === 'object' && value !== null
  return Object.is(left, right) || (isObject(left) && isObject(right))
}

/** A copy with `value` at a dotted path. Every step but the last must already be an object. Throws when it is not. */
export function withValueAt<T>(root: T, path: string, value: unknown): T {
  const [key, ...rest] = path.split('.')
  if (key === undefined || typeof root !== 'object' || root === null) throw new Error(`withValueAt: nothing to hold '${path}'`)
  const inner = rest.length === 0 ? value : withValueAt(own(root, key), rest.join('.'), value)
  return { ...root, [key]: inner }
}

/** Freezes plain data (objects and arrays) all the way down and gives it back. */
export function deepFreeze<T>(data: T): T {
  if (typeof data !== 'object' || data === null || Object.isFrozen(data)) return data
  for (const value of Object.values(data)) deepFreeze(value)
  return Object.freeze(data)
}
