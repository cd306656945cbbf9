import type { LoadNote } from '../../core/model/saidIds.ts'
import type { LoadCase } from '../../core/model/result.ts'

/** Words for loads: how the wind blew in each case tried, which combination set a load, and what an estimate leaves out. */
export const loads = {
  wind: {
    across: 'Wind across the ridge',
    'on-high-eave': 'Wind on the high eave',
    'on-low-eave': 'Wind on the low eave',
    along: 'Wind along the ridge',
  } satisfies Record<LoadCase['wind'], string>,
  figure: {
    A: 'case A of the figure',
    B: 'case B of the figure',
    least: 'the more lifting roof value',
    most: 'the less lifting roof value',
  } satisfies Record<LoadCase['figure'], string>,
  inside: { out: 'air inside pushes up', in: 'air inside draws down' } satisfies Record<NonNullable<LoadCase['inside']>, string>,
  post: { windward: 'post on the windy side', leeward: 'post on the sheltered side' } satisfies Record<LoadCase['post'], string>,
  combinations: {
    D: 'Dead load alone',
    'D-L': 'Dead and live load',
    'D-roof-live': 'Dead load and roof live load',
    'D-snow': 'Dead load and snow',
    'D-0.75L-0.75-roof-live': 'Dead load and 0.75 of roof live load',
    'D-0.75L-0.75-snow': 'Dead load and 0.75 of snow',
    'D-0.6W': 'Dead load and 0.6 of wind',
    'D-0.75L-0.45W-0.75-roof-live': 'Dead load, 0.75 of roof live load, and 0.45 of wind',
    'D-0.75L-0.45W-0.75-snow': 'Dead load, 0.75 of snow, and 0.45 of wind',
    '0.6D-0.6W': '0.6 of dead load against 0.6 of wind',
  },
  notes: {
    'main-frame-only': 'It is for the main frame. Corners and edges of a roof can see more wind.',
    'interior-post': 'It is for a post between two others, with a full bay. An end post carries less roof, a corner can be pulled harder.',
    'roof-off-figure': 'The standard has no value for this shape, slope and flow, so there is no wind estimate.',
    'height-off-figure':
      'The standard covers open roofs that are a quarter to once as high as the roof is long in the wind. This one is not, so there is no wind estimate.',
    'push-on-roof-only': 'The sideways load is wind on the roof alone. Wind on posts, walls, bracing and stored goods comes on top.',
    'no-push-on-level-roof': 'A level roof gives wind no side to push on here. Take the sideways load from the drawing.',
    'push-needs-drawing': 'Sideways load depends on walls and bracing. Take it from the drawing.',
    'overhang-from-below': 'Wind that lifts the overhang from below is not in it.',
    'snow-without-drifts': 'Drifts and snow that slides off another roof are not in it.',
  } satisfies Record<LoadNote, string>,
} as const
