import type { WebGLRenderer } from 'three'
import type { ViewSettings } from '../../../state/appState.ts'
import { makeEnvironment } from '../light/environment.ts'
import { noiseTexture } from '../materials/sharedUniforms.ts'
import type { Lent } from '../Stage.ts'

/** Noise and daylight that all stages of one renderer share: made once, disposed of once. */
export class Lender {
  private readonly noise = noiseTexture()
  private environment: ReturnType<typeof makeEnvironment> | null = null

  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly quality: ViewSettings['quality'],
  ) {
    this.remake()
  }

  get lent(): Lent {
    return { noise: this.noise, environment: this.environment?.texture ?? null }
  }

  /** The daylight lives on the drawing context alone and dies with it. */
  remake(): void {
    if (this.quality === 'full') this.environment = makeEnvironment(this.renderer)
  }

  dispose(): void {
    this.noise.dispose()
    this.environment?.dispose()
  }
}
