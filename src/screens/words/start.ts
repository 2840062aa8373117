/** Every text of the page that a new golfer begins on. */
export const startWords = {
  bagTitle: 'Set up a bag',
  bagWhy: 'Thirteen clubs with usual lofts to correct, or an empty bag to fill.',
  typical: 'Start from typical lofts',
  nothing: 'Start from nothing',
  restoreTitle: 'You have a backup',
  restore: 'Restore a backup',
  demoTitle: 'Just looking?',
  look: 'Look at a file',
  lookWhy: 'Or at somebody’s file, without keeping anything of it here.',
} as const;
