import { expect } from 'vitest'

/** Both allowances are said at every call, so that none is taken by accident: |got - want| <= abs + rel |want|. */
export type Allowance = Readonly<{ abs: number; rel: number }>

export const isClose = (got: number, want: number, { abs, rel }: Allowance): boolean => Math.abs(got - want) <= abs + rel * Math.abs(want)

/** Fails the running test unless `got` is within the allowance of `want`. NaN and infinities never pass. */
export const close = (got: number, want: number, allowance: Allowance, about = ''): void => {
  const passed = Number.isFinite(got) && Number.isFinite(want) && isClose(got, want, allowance)
  const told = `${about ? `${about}: ` : ''}got ${got}, want ${want}, off by ${got - want} (abs ${allowance.abs}, rel ${allowance.rel})`
  expect(passed, told).toBe(true)
}
