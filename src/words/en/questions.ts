import type { MistakeId } from '../../core/model/buildStep.ts'

/** Asked before something is shown: options that somebody believes, the one that holds, and what to look for in the picture. */
export type Question = Readonly<{
  ask: string
  options: readonly [string, string, string]
  /** Place of the one that holds. */
  holds: 0 | 1 | 2
  /** What to look for while it is shown. */
  look: string
}>

/** Questions of the time strip. What holds is what the panel under it says, with its sources. */
export const questions = {
  years: {
    buried: {
      ask: 'How long will this treated post last in the ground?',
      options: ['About 10 years', '60 years or more', 'Nobody can say for one post'],
      holds: 2,
      look: 'Watch the twenty little posts. By what year can nobody tell of any of them?',
    },
    above: {
      ask: 'This post stands on a bracket. What do field tests say of its life?',
      options: ['It never rots', 'It lasts twice as long', 'No test was found that says'],
      holds: 2,
      look: 'Watch the foot of the post. What can still make it wet?',
    },
  },
  month: {
    mixed: {
      ask: 'When may a load go on this concrete?',
      options: ['The next day', 'After seven days, always', 'When those in charge say so'],
      holds: 2,
      look: 'Watch the curve. On what day does it cross the broken line?',
    },
    dry: {
      ask: 'How strong is mix that was placed dry, after a month?',
      options: ['As strong as mixed concrete', 'It never gets hard', 'Nobody can say'],
      holds: 2,
      look: 'Look at the table. Where does no water get to?',
    },
  },
  mistakes: {
    'undersized-hole': {
      ask: 'The hole comes out 2 in too narrow. What loses most?',
      options: ['Its depth', 'What it holds', 'Nothing that counts'],
      holds: 1,
      look: 'Look at the numbers under the picture. Which one fell most?',
    },
    'loose-bottom': {
      ask: 'Loose soil stays at the bottom. What comes of it?',
      options: ['The concrete binds it', 'The pier stands on something soft', 'It packs itself'],
      holds: 1,
      look: 'Look at the bottom of the hole. What does the pier stand on now?',
    },
    'bar-too-high': {
      ask: 'The bar sits too high. What is there less of?',
      options: ['Concrete over the bar', 'Wood under the bar', 'Soil round the pier'],
      holds: 0,
      look: 'Look above the bar. How much concrete has to let go now?',
    },
    'bar-too-short': {
      ask: 'The bar is cut too short. What bears on the concrete now?',
      options: ['Just as much bar', 'Only two short stubs', 'The post alone'],
      holds: 1,
      look: 'Look at both faces of the post. How far does the bar stick out?',
    },
    'flat-top': {
      ask: 'The top is left flat. Where does rain go?',
      options: ['It runs off the top', 'It stays, and finds the post', 'It goes through the concrete'],
      holds: 1,
      look: 'Look at the top. Where could water still run off?',
    },
  } satisfies Readonly<Partial<Record<MistakeId, Question>>>,
} as const
