import type { Pixel } from '../ink.ts'

/** What a path of the ink draws: runs of straight lines, and round dots. */
export type InkShape =
  | Readonly<{ kind: 'run'; points: readonly Pixel[]; closed: boolean }>
  | Readonly<{ kind: 'dot'; centre: Pixel; radius: number }>

/**
 * Reads path data as the drawn section writes it: M and L with one pair each, Z, and dots of two half circles. Anything else is not
 * its hand, and throws.
 */
export function inkShapes(path: string): InkShape[] {
  const shapes: InkShape[] = []
  let points: Pixel[] = []
  const finish = (closed: boolean): void => {
    if (points.length > 1) shapes.push({ kind: 'run', points, closed })
    points = []
  }
  for (const [command = ''] of path.matchAll(/[A-Za-z][^A-Za-z]*/g)) {
    const numbers = command
      .slice(1)
      .trim()
      .split(/[\s,]+/)
      .filter(Boolean)
      .map(Number)
    const [first = 0, second = 0] = numbers
    if (command.startsWith('M')) {
      finish(false)
      points = [[first, second]]
    } else if (command.startsWith('L')) points.push([first, second])
    else if (command.startsWith('Z')) finish(true)
    else if (command.startsWith('a')) {
      const start = points[0]
      if (start) shapes.push({ kind: 'dot', centre: [start[0] + first, start[1]], radius: first })
      points = []
    } else throw new Error(`inkShapes: ${command.slice(0, 20)}`)
  }
  finish(false)
  return shapes
}
