import { describe, it } from 'vitest'
import { leastPostSpacing } from '../../../src/core/engineering/soil/postSpacing.ts'
import { published, readCases, si } from '../cases.ts'

describe('least spacing of posts', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    published(leastPostSpacing({ post: si(row, 'post_in', 'in'), footing: si(row, 'footing_in', 'in') }), row, '=spacing_in', 'in')
  })
})
