/** Shown on every pier, on screen and on paper. Danger first. */
export const standingCautions: readonly Readonly<{ id: string; short: string; long: string }>[] = [
  {
    id: 'not-a-design',
    short: 'Preliminary. Not a design.',
    long: 'These are preliminary numbers and not a design. Local code, your permit drawing and a licensed engineer decide.',
  },
  {
    id: 'call-before-you-dig',
    short: 'Call before you dig.',
    long: 'Call 811 (in the United States) some days before you dig, so that buried lines are marked.',
  },
  {
    id: 'open-holes',
    short: 'Cover open holes.',
    long: 'An open hole can cave in, and people fall in. Cover it, keep soil piles 2 ft away, and never go into a deep hole without shoring.',
  },
  {
    id: 'cement-burns',
    short: 'Wet cement burns skin.',
    long: 'Wet cement burns, often with no pain at first. Wear gloves and boots, change wet clothes, and wash it off at once.',
  },
  {
    id: 'silica-dust',
    short: 'Do not breathe the dust.',
    long: 'Dust from dry mix and cut concrete holds silica, which harms lungs. Keep it wet or wear a fitted mask.',
  },
]
