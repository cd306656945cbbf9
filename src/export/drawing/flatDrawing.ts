/** A point in metres: right, up. */
export type FlatPoint = readonly [number, number]

export type LayerStyle = Readonly<{
  name: string
  /** Index of the format's own colour table: 7 is black or white. */
  colour: number
  line: 'solid' | 'dashed' | 'chain'
}>

export type FlatShape = Readonly<{ layer: string }> &
  (
    | Readonly<{ kind: 'line'; points: readonly FlatPoint[]; closed: boolean }>
    | Readonly<{ kind: 'circle'; centre: FlatPoint; radius: number }>
    /** `at` lies on the base line; `height` is that of a capital [m]. */
    | Readonly<{ kind: 'text'; at: FlatPoint; height: number; text: string; align: 'left' | 'middle' | 'right' }>
  )

/** A drawing in true size, in metres, with nothing but lines, circles and words on layers. */
export type FlatDrawing = Readonly<{
  layers: readonly LayerStyle[]
  shapes: readonly FlatShape[]
  /** Size of a millimetre on paper in the drawing [m]: sets the length of dashes. */
  paperMillimetre: number
}>
