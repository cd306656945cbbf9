/** How long what lets go takes to rise in the picture [ms]. */
const riseTime = 900

/** The share 0..1 by which what has let go has risen, frame by frame. Plain numbers. */
export class Rising {
  private start = -1
  share = 0

  get isRunning(): boolean {
    return this.start >= 0
  }

  /** From its place up; at once where motion is not wanted. */
  begin(now: number, atOnce: boolean): void {
    this.start = atOnce ? -1 : now
    this.share = atOnce ? 1 : 0
  }

  end(): void {
    this.start = -1
    this.share = 0
  }

  /** Moves on to `now` [ms]. */
  frame(now: number): void {
    if (this.start < 0) return
    const t = Math.min(1, Math.max(0, (now - this.start) / riseTime))
    this.share = t * t * (3 - 2 * t)
    if (t >= 1) this.start = -1
  }
}
