/** Changes that are tried on a pier, by their id. */
export const changes = {
  'next-auger': 'One auger size up',
  'six-inches-deeper': '6 in deeper',
  'next-bar': 'Next bar size',
  'another-bar': 'One more bar',
  'add-bell': 'A bell at the bottom',
  'add-vertical-bars': 'Upright bars',
  'next-post': 'Next post size',
  'another-bolt': 'One more bolt',
} as const satisfies Readonly<Record<string, string>>
