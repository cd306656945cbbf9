import { type BufferGeometry, DoubleSide, Group, Mesh as Body, MeshBasicMaterial } from 'three'
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js'
import type { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js'
import { sheetMesh } from '../../../core/geometry/sheetMesh.ts'
import type { Cut } from '../../../core/model/solid.ts'
import type { Sheet } from '../../../core/model/zone.ts'
import { radians } from '../../../core/units/quantity.ts'
import { toBufferGeometry, toLineGeometry } from '../toBufferGeometry.ts'
import { dashes } from './dashes.ts'
import { type LineSet, waterBlue } from './lineSet.ts'

/** The opened sector seen as the rest of the turn: where water would stand in the open cut. */
const opening = ({ open, facing }: Cut): Cut => ({ open: radians(2 * Math.PI - open), facing: radians(facing + Math.PI) })

/** Water: its line on the cut faces, cased in white, and a clear pane across the opening. Frost: a dashed line on the cut faces. */
export class SheetObject {
  readonly group = new Group()
  private readonly line: LineSegments2
  private readonly casing: LineSegments2
  private readonly pane: Body | null
  private lineGeometry: LineSegmentsGeometry | null = null
  private paneGeometry: BufferGeometry | null = null

  constructor(
    readonly id: Sheet['id'],
    lines: LineSet,
  ) {
    const isWater = id === 'water-table'
    this.line = new LineSegments2(undefined, isWater ? lines.water : lines.frost)
    this.casing = new LineSegments2(undefined, lines.casing)
    this.casing.renderOrder = 6
    this.line.renderOrder = 7
    this.pane = isWater
      ? new Body(undefined, new MeshBasicMaterial({ color: waterBlue, transparent: true, opacity: 0.16, side: DoubleSide, depthWrite: false }))
      : null
    if (this.pane) {
      this.pane.renderOrder = 8
      this.group.add(this.pane)
    }
    this.group.add(this.casing, this.line)
  }

  show(sheet: Sheet, cut: Cut, segments: number, special: readonly number[]): void {
    const isOpen = cut.open > 1e-3
    this.group.visible = isOpen
    if (!isOpen) return
    const { outline } = sheetMesh(sheet, cut, { segments, special })
    this.lineGeometry = toLineGeometry(this.pane ? outline : dashes(outline, 0.075, 0.045), this.lineGeometry)
    this.line.geometry = this.lineGeometry
    this.casing.geometry = this.lineGeometry
    if (!this.pane) return
    this.paneGeometry = toBufferGeometry(sheetMesh(sheet, opening(cut), { segments, special }), this.paneGeometry)
    this.pane.geometry = this.paneGeometry
  }

  dispose(): void {
    this.lineGeometry?.dispose()
    this.paneGeometry?.dispose()
    if (this.pane) (this.pane.material as MeshBasicMaterial).dispose()
    this.group.removeFromParent()
  }
}
