import type { Borrowed, GapVerdict } from '../book/book.ts';
import type { Lie } from '../golf/lie.ts';
import type { Strike } from '../golf/shot.ts';

/** The language of every text below and of every date and figure on screen. */
export const LOCALE = 'en-GB';

const plural = new Intl.PluralRules(LOCALE);

/** `1 shot`, `12 shots`. */
function counted(n: number, one: string, other: string): string {
  return `${figure(n)} ${plural.select(n) === 'one' ? one : other}`;
}

const figures = new Intl.NumberFormat(LOCALE);

/** A whole or decimal figure as this language writes it. */
export function figure(n: number): string {
  return figures.format(n).replace('-', '\u2212');
}

const percents = new Intl.NumberFormat(LOCALE, { style: 'percent', maximumFractionDigits: 0 });

/** A probability from 0 to 1 in words that never claim certainty. */
function sure(p: number): string {
  if (p > 0.99) return `more than ${percents.format(0.99)}`;
  if (p < 0.01) return `less than ${percents.format(0.01)}`;
  return percents.format(p);
}

const borrowed: Record<Borrowed, string> = {
  yours: 'This number is yours: it rests on your own shots.',
  'partly borrowed': 'Partly borrowed: your own shots here, and what your other clubs and swings say about this one.',
  'mostly borrowed from neighbours':
    'Mostly borrowed from its neighbours: your other clubs and swings say more about it than the few shots here.',
  'typical golfer, not you': 'A typical golfer’s number for this loft, not yours: there is no shot in the book yet.',
};

const lie: Record<Lie, string> = {
  tee: 'tee',
  fairway: 'fairway',
  'light rough': 'light rough',
  'heavy rough': 'heavy rough',
  'fairway bunker': 'fairway bunker',
  'greenside bunker': 'greenside bunker',
  bare: 'bare lie',
  other: 'other lie',
};

const strike: Record<Strike, string> = { solid: 'solid', thin: 'thin', fat: 'fat', heel: 'heel', toe: 'toe' };

const verdict: Record<GapVerdict, (p: number) => string> = {
  overlap: (p) => `the same distance, ${sure(p)} likely: an overlap.`,
  "can't tell yet": (p) => `they may be the same distance (${sure(p)} likely); more shots with both would tell.`,
  'wide gap': (p) => `a wide gap, ${sure(p)} likely.`,
  'possibly wide': (p) => `possibly a wide gap (${sure(p)} likely).`,
  gap: (p) => `a gap to rely on; ${sure(p)} likely that they are the same distance.`,
};

/** Every text of the app, in one place and in one language. */
export const words = {
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
  places: { label: 'Places', yardages: 'Yardages' },
  units: {
    yards: { long: 'yards', short: 'yd' },
    metres: { long: 'metres', short: 'm' },
  },
  kinds: {
    driver: 'Driver',
    'fairway wood': 'Fairway wood',
    hybrid: 'Hybrid',
    'driving iron': 'Driving iron',
    iron: 'Iron',
    wedge: 'Wedge',
    putter: 'Putter',
  },
  swings: { full: 'full' },
  loft: (degrees: number) => `${figure(degrees)}°`,
  lie,
  strike,
  open: {
    title: 'Open a book',
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
    review: 'This is a coach’s review: notes for a logbook, but no shots. Open the logbook itself.',
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
  display: {
    title: 'Display',
    theme: 'Light',
    themes: { auto: 'Auto', paper: 'Day', night: 'Night', glare: 'Sun glare' },
    units: 'Distances',
    unitChoices: { yards: 'Yards', metres: 'Metres' },
  },
  yardages: {
    title: 'Yardages',
    whose: (name: string) => (name ? `${name}’s book` : 'Your book'),
    sub: (unit: string, shots: number, day: string) =>
      `Carry in ${unit}, standard conditions · ${counted(shots, 'shot', 'shots')} · as of ${day}`,
    reckoning: 'Reckoning the book …',
    failed: (why: string) => `The book could not be reckoned: ${why}`,
    again: 'Try again',
    wedges: 'Wedges',
    wedge: 'Wedge',
    card: 'Full swings',
    also: 'Also in the book',
    notPlayed: 'not played',
    noNumber: 'no number',
    noClubs: 'There is no club in this bag yet, so there is no number to show.',
    howTo: (unit: string) =>
      `Large: stock carry. Small: ±\u00a0${unit}, 8 in 10 sure, then own shots. ~\u00a0dotted: borrowed, no own shot yet. Tap a number for what stands behind it.`,
    standard: 'Standard conditions: 20\u00a0°C, sea level, no wind, level ground.',
    about: 'about',
    shots: (n: number) => counted(n, 'own shot', 'own shots'),
    noShots: 'no own shots',
    outOfBag: 'not in the bag',
    before: (until: string, loft: string) => `before ${until}, loft ${loft}`,
  },
  number: {
    title: (club: string, swing: string) => `${club} ${swing}`,
    sub: (loft: string, unit: string) => `Carry in ${unit}, standard conditions · loft ${loft}`,
    gone: 'This number is not in the book.',
    toCard: 'To the card',
    stock: 'Stock carry',
    stockWords: (stock: string, lo: string, hi: string) =>
      `The middle of your solid strikes is ${stock}; 8 in 10 sure that it lies between ${lo} and ${hi}.`,
    borrowedWords: (stock: string, lo: string, hi: string) =>
      `About ${stock}, borrowed; 8 in 10 sure that your own lies between ${lo} and ${hi}.`,
    nextTitle: 'The next ball',
    next: (lo: string, hi: string, half: string) =>
      `Mishits included, 8 balls in 10 carry between ${lo} and ${hi}. One in ten falls short of ${lo}. Half carry ${half} or more.`,
    picture: 'Carry of the next ball',
    pictureText: (lo: string, hi: string, stock: string) =>
      `A hill over a scale of carries: 8 balls in 10 between ${lo} and ${hi}, with the stock carry marked at ${stock}.`,
    pictureKey: 'Hatched: 8 balls in 10. Line: stock carry; bar under it: 8 in 10 sure.',
    marksKey: 'Marks: your shots as measured, dashed for mishits.',
    borrowedTitle: 'Where it comes from',
    borrowed: (from: Borrowed, shots: number) =>
      shots === 0 && from !== 'typical golfer, not you'
        ? 'Borrowed: no shot of yours with this club and swing yet. It follows from your other clubs and swings.'
        : borrowed[from],
    own: (share: number) => `Own share of the evidence: ${sure(share)}.`,
    claimed: (claimed: string) => `Your own word for it was ${claimed}; that counts as one weak shot.`,
    gapsTitle: 'Beside it',
    gap: (club: string, gap: string, lo: string, hi: string) => `${club}: ${gap} apart (8 in 10 sure: ${lo} to ${hi});`,
    longer: 'Longer',
    shorter: 'Shorter',
    verdict,
    nearest: 'The nearest numbers in the book:',
    shotsTitle: 'Shots behind it',
    noShots: 'None yet. One good shot from a good lie says more than any table.',
    solidOf: (solid: number, shots: number) =>
      `${counted(shots, 'shot', 'shots')}, ${figure(solid)} of them taken for solid. Carries as measured; the number above allows for lie, weather and practice balls.`,
    showAll: (n: number) => `Show all ${figure(n)} shots`,
    leftOutTitle: 'Shots left out',
    strikeOpen: 'strike not noted',
    practiceGround: 'practice ground',
    rangeBall: 'practice ground, range ball',
    lieOpen: 'lie not noted',
    carry: (value: string, error: string) => `${value}\u00a0±\u00a0${error}`,
    total: (value: string) => `total ${value}`,
    cleared: (value: string) => `cleared ${value}`,
    shortOf: (value: string) => `short of ${value}`,
  },
} as const;
