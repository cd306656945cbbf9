import { gaussLegendre } from '../geometry/quadrature.ts'

const rule = gaussLegendre(40)

/**
 * Share of a standard normal distribution that lies below z, to 1e-15.
 * @param z any finite number
 * Formula: 1/2 + integral of exp(-t^2/2)/sqrt(2 pi) from 0 to z, by Gauss' rule
 * Source: definition. Checked by: tests/core/uncertainty/distributions.test.ts
 */
export function normalShareBelow(z: number): number {
  const reach = Math.min(Math.abs(z), 9)
  const half = reach / 4
  let sum = 0
  for (const middle of [half, 3 * half])
    for (let k = 0; k < rule.nodes.length; k++)
      sum += half * (rule.weights[k] ?? 0) * Math.exp(-((middle + half * (rule.nodes[k] ?? 0)) ** 2) / 2)
  const share = sum / Math.sqrt(2 * Math.PI)
  return z < 0 ? 0.5 - share : 0.5 + share
}

type Row = readonly number[]
const middleOver: Row = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087, 33430.57558358813,
  2509.0809287301227,
]
const middleUnder: Row = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854,
]
const sideOver: Row = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506,
  0.022723844989269184, 0.0007745450142783414,
]
const sideUnder: Row = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457, 0.0005475938084995345,
  1.0507500716444169e-9,
]
const tailOver: Row = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124, 0.0012426609473880784,
  2.7115555687434876e-5, 2.0103343992922881e-7,
]
const tailUnder: Row = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 1.8463183175100548e-5, 1.421511758316446e-7,
  2.0442631033899397e-15,
]

const polynomial = (row: Row, x: number): number => {
  let sum = 0
  for (let i = row.length - 1; i >= 0; i--) sum = sum * x + (row[i] as number)
  return sum
}

/**
 * The z below which a share of a standard normal distribution lies, to about 1e-15 relative.
 * @param share between 0 and 1, ends left out
 * Formula: quotients of polynomials on three stretches
 * Source: Wichura, algorithm AS 241 (PPND16), Applied Statistics 37, 1988; coefficients from memory, as doubles, checked by the round trip.
 * Checked by: tests/core/uncertainty/distributions.test.ts
 */
export function normalAtShare(share: number): number {
  const off = share - 0.5
  if (Math.abs(off) <= 0.425) {
    const r = 0.180625 - off * off
    return (off * polynomial(middleOver, r)) / polynomial(middleUnder, r)
  }
  const r = Math.sqrt(-Math.log(off < 0 ? share : 1 - share))
  const z =
    r <= 5 ? polynomial(sideOver, r - 1.6) / polynomial(sideUnder, r - 1.6) : polynomial(tailOver, r - 5) / polynomial(tailUnder, r - 5)
  return off < 0 ? -z : z
}
