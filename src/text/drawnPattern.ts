/** Patterns and lines that a legend may name. */
export type DrawnPattern =
  | 'earth' | 'sand' | 'clay' | 'pebbles' | 'rock' | 'topsoil' | 'broken-earth' | 'stones' | 'concrete' | 'mortar' | 'flowable' | 'grain' | 'steel'
  | 'water' | 'frost'
