/** Words for a pier that came with a link: read when one is opened. */
export const looking = {
  title: 'A pier from a link, to look at.',
  mine: 'Your own pier waits behind it, as you left it.',
  fresh: 'Make it yours to change it.',
  take: 'Make it mine',
  beside: 'Set it beside mine',
  back: 'Back to my pier',
  leave: 'Put it away',
  tag: 'From the link',
  order: 'The pier from the link first. No ranking.',
  /** My own pier beside the one from the link, where it has no name. */
  own: 'Your pier',
  notSaved: 'You are looking at a pier from a link. Make it yours to save it.',
}
