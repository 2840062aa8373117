import type { Borrowed, GapVerdict } from '../../book/book.ts';
import { counted, figure, sure } from './figure.ts';

const borrowed: Record<Borrowed, string> = {
  yours: 'This number is yours: it rests on your own shots.',
  'partly borrowed': 'Partly borrowed: your own shots here, and what your other clubs and swings say about this one.',
  'mostly borrowed from neighbours':
    'Mostly borrowed from its neighbours: your other clubs and swings say more about it than the few shots here.',
  'typical golfer, not you': 'A typical golfer’s number for this loft, not yours: there is no shot in the book yet.',
};

const verdict: Record<GapVerdict, (p: number) => string> = {
  overlap: (p) => `the same distance, ${sure(p)} likely: an overlap.`,
  "can't tell yet": (p) => `they may be the same distance (${sure(p)} likely); more shots with both would tell.`,
  'wide gap': (p) => `a wide gap, ${sure(p)} likely.`,
  'possibly wide': (p) => `possibly a wide gap (${sure(p)} likely).`,
  gap: (p) => `a gap to rely on; ${sure(p)} likely that they are the same distance.`,
};

/** Every text of the Yardages place. */
export const yardagesWords = {
  yardages: {
    title: 'Yardages',
    whose: (name: string) => (name ? `${name}’s book` : 'Your book'),
    sub: (unit: string, shots: number, day: string) =>
      `Carry in ${unit}, standard conditions · ${counted(shots, 'shot', 'shots')} · as of ${day}`,
    frozen: (at: string, hash: string | null) =>
      `A round by the Rules is being played: this is the card as it stood at ${at}${hash ? `, mark ${hash}` : ''}. No shot of this round is in it.`,
    notAsFrozen:
      'It is not to the digit the card that was frozen: something it rests on was changed since, or the app was.',
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
    claimed: (claimed: string) => `You said ${claimed}. Until shots say otherwise the book leans on your word.`,
    claimedAgainst: (claimed: string, shots: number, stock: string, plusMinus: string) =>
      `You said ${claimed}; ${counted(shots, 'shot says', 'shots say')} ${stock}\u00a0±\u00a0${plusMinus}. Your word counts as one weak shot.`,
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
