/** Screen pixels that a paper millimetre takes at rest. */
const pixelsPerMillimetre = 4.2
const fadeTime = 150

/**
 * Size of a paper millimetre in the material [m], on a ladder of factor 2 so that marks stay fixed in the ground while the eye
 * moves; from rung to rung they fade over.
 */
export class PaperScale {
  private rung: number | null = null
  private before = 0
  private since = -Infinity

  /** The rung for a picture that is drawn once. */
  static rungFor(metresPerPixel: number): number {
    return 2 ** Math.round(Math.log2(metresPerPixel * pixelsPerMillimetre))
  }

  /** `metresPerPixel` at the section. Writes (now, next, share of next) into `into`; true while a fade goes on. */
  update(metresPerPixel: number, now: number, into: { set(x: number, y: number, z: number): unknown }): boolean {
    const wanted = Math.log2(metresPerPixel * pixelsPerMillimetre)
    if (this.rung === null) this.rung = Math.round(wanted)
    else if (Math.abs(wanted - this.rung) > 0.62) {
      this.before = this.rung
      this.rung = Math.round(wanted)
      this.since = now
    }
    const share = Math.min(1, (now - this.since) / fadeTime)
    if (share >= 1) into.set(2 ** this.rung, 2 ** this.rung, 0)
    else into.set(2 ** this.before, 2 ** this.rung, share)
    return share < 1
  }
}
