import { counted } from './figure.ts';

/** Every text of opening a file. */
export const openWords = {
  open: {
    title: 'Open a book',
    justLook:
      'A file opened here is only looked at, as a coach or a fitter does: nothing of it is kept on this device, and your own logbook stays as it is.',
    looking: (name: string) =>
      `You are looking at ${name ? `${name}’s book` : 'a book'} from a file. Nothing of it is kept here.`,
    away: 'Back to my logbook',
    removeDemo: 'Remove the demo season',
    demoShown: 'This is the demo season: invented shots of an invented golfer.',
    byTheRules: 'Nothing is brought in while a round by the Rules is being played. Close the round first.',
    file: 'Open a Carrybook file',
    another: 'Open another book',
    drop: 'Or drop the file anywhere on this page. It is read on this device and goes nowhere else.',
    demoTitle: 'No file yet?',
    demo: 'Look at a season we made up: two invented golfers, an invented course.',
    demoPlayer: 'A player’s season',
    demoCoach: 'A coach’s season',
    reading: (name: string) => `Reading ${name} …`,
    chooseTitle: 'Whose book?',
    choose: (n: number) => `This team file holds ${counted(n, 'logbook', 'logbooks')} to read.`,
    unnamed: 'A golfer without a name',
    review: 'This is a coach’s review: notes for a logbook, but no shots. Take it in under Team, “My coach’s words”.',
    demoMissing: (status: number) => `The demo season could not be fetched (answer ${status}).`,
    notRead: (why: string) => `The file could not be read: ${why}`,
    tooLarge: 'The file is larger than any logbook or team file that can be read.',
    notFetched:
      'The demo season could not be fetched. The connection may be down; a file on this device opens all the same.',
  },
  refusal: {
    title: (name: string) => `${name} was not opened`,
    place: 'Place',
    expected: 'Expected',
    found: 'Found',
    whole: 'the file as a whole',
    safe: 'Nothing else has changed.',
  },
} as const;
