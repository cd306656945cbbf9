import { vi } from 'vitest'

/** Waits for as long as a busy machine may need until a check holds: what is waited for is told by the check, never by a time. */
export const until = (check: () => void | Promise<void>): Promise<void> => vi.waitFor(check, { timeout: 60_000 })
