import type { holds } from '../../core/derive/build/guesses.ts'

/** Asked before something is shown: options that somebody believes, and what to look for in the picture. Which of them holds is no matter of words. */
type Question = Readonly<{
  ask: string
  options: readonly [string, string, string]
  /** What to look for while it is shown. */
  look: string
}>

/** Questions of the time strip. What holds is what the panel under it says, with its sources. */
export const questions = {
  years: {
    buried: {
      ask: 'How long will this treated post last in the ground?',
      options: ['About 10 years', '60 years or more', 'Nobody can say for one post'],
      look: 'Watch the twenty little posts. By what year can nobody tell of any of them?',
    },
    above: {
      ask: 'This post stands on a bracket. What do field tests say of its life?',
      options: ['It never rots', 'It lasts twice as long', 'No test was found that says'],
      look: 'Watch the foot of the post. What can still make it wet?',
    },
  },
  month: {
    mixed: {
      ask: 'When may a load go on this concrete?',
      options: ['The next day', 'After seven days, always', 'When those in charge say so'],
      look: 'Watch the curve. On what day does it cross the broken line?',
    },
    dry: {
      ask: 'How strong is mix that was placed dry, after a month?',
      options: ['As strong as mixed concrete', 'It never gets hard', 'Nobody can say'],
      look: 'Look at the table. Where does no water get to?',
    },
  },
  mistakes: {
    'undersized-hole': {
      ask: 'The hole comes out 2 in too narrow. What loses most?',
      options: ['Its depth', 'What it holds', 'Nothing that counts'],
      look: 'Look at the numbers under the picture. Which one fell most?',
    },
    'loose-bottom': {
      ask: 'Loose soil stays at the bottom. What comes of it?',
      options: ['The concrete binds it', 'The pier stands on something soft', 'It packs itself'],
      look: 'Look at the bottom of the hole. What does the pier stand on now?',
    },
    'bar-too-high': {
      ask: 'The bar sits too high. What is there less of?',
      options: ['Concrete over the bar', 'Wood under the bar', 'Soil round the pier'],
      look: 'Look above the bar. How much concrete has to let go now?',
    },
    'bar-too-short': {
      ask: 'The bar is cut too short. What bears on the concrete now?',
      options: ['Just as much bar', 'Only two short stubs', 'The post alone'],
      look: 'Look at both faces of the post. How far does the bar stick out?',
    },
    'flat-top': {
      ask: 'The top is left flat. Where does rain go?',
      options: ['It runs off the top', 'It stays, and finds the post', 'It goes through the concrete'],
      look: 'Look at the top. Where could water still run off?',
    },
  },
} as const satisfies { readonly [Of in keyof typeof holds]: Readonly<Record<keyof (typeof holds)[Of], Question>> }
