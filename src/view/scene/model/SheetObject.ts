import { Group } from 'three'
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js'
import type { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js'
import { sheetMesh } from '../../../core/geometry/sheetMesh.ts'
import type { Cut } from '../../../core/model/solid.ts'
import type { Sheet } from '../../../core/model/zone.ts'
import { toLineGeometry } from '../toBufferGeometry.ts'
import { dashes } from './dashes.ts'
import type { LineSet } from './lineSet.ts'

/** Where a sheet meets the cut faces: water a blue line cased in white (the ground below it is tinted by its own materials), frost a dashed line. */
export class SheetObject {
  readonly group = new Group()
  private readonly line: LineSegments2
  private readonly casing: LineSegments2
  private readonly isWater: boolean
  private lineGeometry: LineSegmentsGeometry | null = null

  constructor(
    readonly id: Sheet['id'],
    lines: LineSet,
  ) {
    this.isWater = id === 'water-table'
    this.line = new LineSegments2(undefined, this.isWater ? lines.water : lines.frost)
    this.casing = new LineSegments2(undefined, lines.casing)
    this.casing.renderOrder = 6
    this.line.renderOrder = 7
    this.group.add(this.casing, this.line)
  }

  show(sheet: Sheet, cut: Cut, segments: number, special: readonly number[]): void {
    const isOpen = cut.open > 1e-3
    this.group.visible = isOpen
    if (!isOpen) return
    const { outline } = sheetMesh(sheet, cut, { segments, special })
    this.lineGeometry = toLineGeometry(this.isWater ? outline : dashes(outline, 0.075, 0.045), this.lineGeometry)
    this.line.geometry = this.lineGeometry
    this.casing.geometry = this.lineGeometry
  }

  dispose(): void {
    this.lineGeometry?.dispose()
    this.group.removeFromParent()
  }
}
