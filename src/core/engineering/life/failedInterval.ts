type Inputs = Readonly<{ failed: number; sample: number; confidence: number }>

/**
 * Shares of failures that a count of them leaves open, by the binomial of Clopper and Pearson.
 * @param failed number that failed [1], 0 to `sample`
 * @param sample number watched [1], 1 or more
 * @param confidence of the interval [1], above 0 and below 1; where none failed all of it goes to the upper end
 * @returns least and greatest share [1]
 * Formula: P(X >= k | low) = (1 - c)/2, P(X <= k | high) = (1 - c)/2; for k = 0: low = 0, P(X = 0 | high) = 1 - c
 * Valid: a sample like what it is used for. Outside: posts in another soil or with another treatment are not in it.
 * Source: binomial-bound
 * Checked by: tests/external/binomial-bound/check.test.ts
 */
export function failedInterval({ failed, sample, confidence }: Inputs): Readonly<{ low: number; high: number }> {
  const tail = failed === 0 ? 1 - confidence : (1 - confidence) / 2
  const high = failed >= sample ? 1 : shareWhere((p) => atMost(failed, sample, p) - tail)
  const low = failed === 0 ? 0 : shareWhere((p) => tail - (1 - atMost(failed - 1, sample, p)))
  return { low, high }
}

/** Chance of `k` failures or fewer among `n` of which each fails with chance `p`. */
function atMost(k: number, n: number, p: number): number {
  let term = (1 - p) ** n
  let sum = term
  for (let i = 0; i < k; i++) {
    term *= ((n - i) / (i + 1)) * (p / (1 - p))
    sum += term
  }
  return sum
}

/** Share at which a function that falls comes to nothing, to the last bit. */
function shareWhere(falls: (p: number) => number): number {
  let [low, high] = [0, 1]
  for (let pass = 0; pass < 60; pass++) {
    const middle = (low + high) / 2
    if (falls(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}
