/** The name of the button in the head, apart from all other words of files so that the first load stays small. */
export const takeAlong = 'Take it along'
