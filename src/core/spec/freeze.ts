/** Freezes plain data (objects and arrays) all the way down and gives it back. */
export function deepFreeze<T>(data: T): T {
  if (typeof data !== 'object' || data === null || Object.isFrozen(data)) return data
  for (const value of Object.values(data)) deepFreeze(value)
  return Object.freeze(data)
}
