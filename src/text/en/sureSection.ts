/** Words of the study of ranges that are there before it is opened. */
export const sureSection = {
  title: 'How sure',
  help: 'How far the answer moves when soil, concrete and work come out a little different.',
  loading: 'Loading.',
}
