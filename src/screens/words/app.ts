/** The texts that stand around every place. */
export const appWords = {
  app: 'Carrybook',
  appMotto:
    'A book of carries: how far each club and each partial swing really carries for you on the course, and how sure that is.',
  cautionsTitle: 'Before you play',
  cautions: [
    'Every number is an estimate from the shots that were logged.',
    'Look, and make sure that nobody can be hit, before you play.',
    'Suspend play for lightning. Keep the pace of play.',
    'The Rules of Golf, the Committee’s Local Rules and a school association’s phone policy decide, not this app.',
  ],
  back: 'Back',
  broken: {
    title: 'Something went wrong here',
    why: (why: string) => `The page could not be drawn: ${why}. Nothing that is stored has changed.`,
    again: 'Start again',
  },
  places: { label: 'Places', round: 'Round', yardages: 'Yardages', bag: 'Bag', team: 'Team', more: 'More' },
  display: {
    title: 'Display',
    theme: 'Light',
    themes: { auto: 'Auto', paper: 'Day', night: 'Night', glare: 'Sun glare' },
    units: 'Distances',
    unitChoices: { yards: 'Yards', metres: 'Metres' },
  },
  openTitle: 'Open a book',
  opening: 'Opening the logbook …',
  fetching: 'One moment …',
  notFetched: (why: string) => `This place could not be loaded: ${why}`,
  loadAgain: 'Load the page again',
} as const;
