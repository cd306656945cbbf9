import type { Scene, WebGLRenderer } from 'three'
import type { AppState, Viewpoint } from '../../state/appState.ts'
import type { SafeArea } from './camera/framing.ts'
import type { Pose, Viewport } from './camera/lens.ts'
import type { PictureCamera } from './camera/PictureCamera.ts'

/** What lies over the picture and wants to follow it. */
export type Overlay = Readonly<{
  /** Room the picture may fill, given the words that stand round it. */
  safeArea(viewport: Viewport, state: AppState, name: Viewpoint): SafeArea
  /** The state has changed. */
  refresh(state: AppState): void
  /** Each drawn frame: move what is tied to points. */
  track(pose: Pose, viewport: Viewport): void
  grab(): void
  /** The camera rests: lay everything out anew. */
  settle(pose: Pose, viewport: Viewport): void
}>

export type Playground = Readonly<{
  renderer: WebGLRenderer
  scene: Scene
  camera: PictureCamera
  element: HTMLElement
  needFrame(): void
  /** Draws with fewer or more pixels: a share of the screen's own. */
  setSharpness(share: number): void
}>
