/** A moving picture that takes longer than this for a frame is drawn with fewer pixels until it rests [ms]. */
const slowFrame = 40
const coarse = 0.6

/** Pixels are given up only while something moves and frames come slowly; at rest all come back. */
export class Pace {
  private lastFrame = 0
  private slow = 0
  isCoarse = false

  constructor(
    private readonly setSharpness: (share: number) => void,
    private readonly needFrame: () => void,
  ) {}

  /** Once a frame. */
  tick(isMoving: boolean, now: number): void {
    this.slow = isMoving && now - this.lastFrame > slowFrame ? this.slow + 1 : 0
    this.lastFrame = now
    if (isMoving && this.slow > 2 && !this.isCoarse) this.set(true)
    else if (!isMoving && this.isCoarse) this.set(false)
  }

  private set(isCoarse: boolean): void {
    this.isCoarse = isCoarse
    this.setSharpness(isCoarse ? coarse : 1)
    this.needFrame()
  }
}
