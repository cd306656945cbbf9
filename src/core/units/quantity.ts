/** Branded SI numbers. Inside the core everything is coherent SI; units people use exist only at the border. */
declare const unit: unique symbol
type Quantity<U extends string> = number & { readonly [unit]: U }

export type Metres = Quantity<'m'>
export type SquareMetres = Quantity<'m2'>
export type CubicMetres = Quantity<'m3'>
export type Newtons = Quantity<'N'>
export type NewtonMetres = Quantity<'N.m'>
export type Pascals = Quantity<'Pa'>
/** Weight per volume [N/m3]. */
export type UnitWeight = Quantity<'N/m3'>
/** Pressure gained per depth [Pa/m]; same dimension as a unit weight, another meaning. */
export type PressureGradient = Quantity<'Pa/m'>
export type Radians = Quantity<'rad'>
/** Rise over run, non-negative. */
export type Slope = Quantity<'rise/run'>

/** Time [s]. A year is 365.25 days. */
export type Seconds = Quantity<'s'>
/** Celsius temperature [degC], the SI's own name for kelvin less 273.15. */
export type Celsius = Quantity<'degC'>
/** Depth of rain per time, or hydraulic conductivity [m/s]. */
export type MetresPerSecond = Quantity<'m/s'>
/** Volume of water per time [m3/s]. */
export type CubicMetresPerSecond = Quantity<'m3/s'>

/** What a number is, so that it can be parsed, bounded and printed. */
export type QuantityKind =
  | 'length' // m      in, ft, ft-in | m, cm, mm
  | 'area' // m2       ft2 | m2
  | 'volume' // m3     ft3, yd3 | m3, L
  | 'weight' // N      lb | kg (the weight of so much material)
  | 'force' // N       lb, kip | N, kN (a load or a resistance)
  | 'moment' // N.m   lb-ft | N-m, kN-m
  | 'strength' // Pa   psi, ksi | MPa
  | 'pressure' // Pa   psf, ksf | kPa
  | 'unitWeight' // N/m3  pcf | kN/m3
  | 'gradient' // Pa/m    psf/ft | kPa/m
  | 'angle' // rad     deg
  | 'slope' // rise/run   %, deg, H:1V
  | 'ratio' // 1       plain or %
  | 'count' // 1       whole number
  | 'duration' // s  h, min
  | 'age' // s       d
  | 'life' // s      yr
  | 'temperature' // degC  degF | degC
  | 'rain' // m/s    in/h | mm/h
  | 'speed' // m/s    mph | m/s, km/h (wind)
  | 'conductivity' // m/s
  | 'flow' // m3/s   gal/min | L/s
  | 'dosage' // m3/m3  gal/yd3 | L/m3 (water added to so much concrete)
  | 'money' // 1     in the currency that the user thinks in

export type UnitSystem = 'us' | 'metric'

export const metres = (value: number): Metres => value as Metres
export const squareMetres = (value: number): SquareMetres => value as SquareMetres
export const cubicMetres = (value: number): CubicMetres => value as CubicMetres
export const newtons = (value: number): Newtons => value as Newtons
export const pascals = (value: number): Pascals => value as Pascals
export const unitWeight = (value: number): UnitWeight => value as UnitWeight
export const pressureGradient = (value: number): PressureGradient => value as PressureGradient
export const radians = (value: number): Radians => value as Radians
export const slope = (value: number): Slope => value as Slope
export const seconds = (value: number): Seconds => value as Seconds
export const celsius = (value: number): Celsius => value as Celsius
export const metresPerSecond = (value: number): MetresPerSecond => value as MetresPerSecond
export const cubicMetresPerSecond = (value: number): CubicMetresPerSecond => value as CubicMetresPerSecond
