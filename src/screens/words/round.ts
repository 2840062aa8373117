// Long because it is every text of a place with ten pages, best translated in one go.
import type { HoleState } from '../../golf/holeScore.ts';
import type { Play } from '../../golf/round.ts';
import type { WindForce } from '../../golf/windForce.ts';
import type { UndoWhat } from '../../logbook/undoEntry.ts';
import { counted, figure } from './figure.ts';

const shots = (n: number): string => counted(n, 'shot', 'shots');
const strokes = (n: number): string => counted(n, 'stroke', 'strokes');
const putts = (n: number): string => counted(n, 'putt', 'putts');
const holes = (n: number): string => counted(n, 'hole', 'holes');
const clubs = (n: number): string => counted(n, 'club', 'clubs');

/** Against par as a card has it: `level par`, `3 over par`, `2 under par`. */
const toPar = (n: number): string => (n === 0 ? 'level par' : n > 0 ? `${n} over par` : `${-n} under par`);

/** What the eye sees at each force. Source: Beaufort scale, specifications for use on land, from memory. */
const forces: Record<WindForce, string> = {
  2: 'felt on the face',
  3: 'flags extend',
  4: 'dust blows',
  5: 'small trees sway',
  6: 'large branches move',
};

const state: Record<HoleState, string> = {
  'not started': 'not played',
  'in play': 'in play',
  holed: 'holed',
  'picked up': 'picked up',
  conceded: 'conceded',
};

const play: Record<Play, string> = { rules: 'by the Rules', casual: 'casual', 'practice ground': 'practice ground' };

const undone: Record<UndoWhat, string> = {
  'log shot': 'a shot was logged',
  'edit shot': 'a shot was changed',
  'move shot': 'a shot was moved',
  'delete shot': 'a shot was deleted',
  'restore shot': 'a shot was brought back',
  'set hole': 'a hole was changed',
  'edit round': 'the round was changed',
  'close round': 'the round was closed',
  'reopen round': 'the round was opened again',
  'delete round': 'a round was deleted',
  'restore round': 'a round was brought back',
  'save club': 'a club was changed',
  'remove club': 'a club was removed',
};

/** Every text of the Round place but those of the page that logs one shot. */
export const roundWords = {
  title: 'Round',
  opening: 'Opening the logbook …',
  gone: 'This round is not in the logbook any more.',
  toStart: 'To the start',
  locked: 'A round by the Rules is being played. What was played earlier stays as it is until that round is over.',
  referee: 'For the referee',
  play,
  state,
  saved: (n: number) => `${n} saved`,
  unsaved: (n: number) => `${counted(n, 'change', 'changes')} not saved yet`,
  tryNow: 'Try now',
  undo: {
    key: 'Undo',
    what: (what: UndoWhat) => `Last: ${undone[what]}.`,
    nothing: 'There is nothing to take back.',
    'changed since': 'It was changed elsewhere since, so it stays as it is.',
    'round open': 'Another round is being played. Close that one first.',
  },
  start: {
    title: 'A new round',
    titlePractice: 'A practice session',
    course: 'Course',
    tees: 'Tees',
    earlier: 'Played before',
    holes: 'Holes',
    holeChoices: { '9': '9', '18': '18' },
    first: 'First hole',
    how: 'How you play',
    plays: { rules: 'By the Rules', casual: 'Casual', 'practice ground': 'Practice ground' },
    says: {
      rules:
        'For any score that counts. Your book stays as it is now until the round is over, and the Yardages place is the printed card only. The Committee decides whether phones are allowed: ask before the round.',
      casual:
        'Numbers follow each shot, may be searched and adjusted to the day. In return the score is not one by the Rules: do not hand it in.',
      'practice ground': 'Shots at a target you measured, kept apart from the course: no score, no holes.',
    },
    devices: 'Distance devices',
    deviceChoices: { yes: 'Allowed', no: 'Not allowed here' },
    devicesSay: {
      yes: '',
      no: 'Local Rule G-5: this app measures no distance in this round.',
    },
    balls: 'Balls',
    ballChoices: { own: 'My own', range: 'Range balls' },
    bag: 'Bag',
    bagHolds: (n: number) => `${clubs(n)} in the bag`,
    bagFull: (n: number, over: number) =>
      `${clubs(n)} in the bag. A round by the Rules starts with 14 at most (Rule 4.1b): take ${clubs(over)} out.`,
    bagEmpty: 'The bag is empty. Shots can be logged, but they feed a number only when their club is known.',
    toBag: 'To the bag',
    conditions: 'Conditions',
    conditionsNote:
      'All may stay open. What you know makes the numbers of other days truer. Height is above the sea; pressure as a station measures it stands in its stead.',
    temperature: (unit: string) => `Temperature, ${unit}`,
    altitude: (unit: string) => `Height, ${unit}`,
    altitudeUnits: { yards: 'feet', metres: 'metres' },
    pressure: 'Pressure, hPa',
    wind: 'Wind',
    windChoices: { open: 'Open', none: 'None felt', compass: 'By compass', clock: 'By the clock' },
    windFrom: 'It blows from',
    clock: 'On the first hole it comes from',
    clockSays: '12 is into you, 3 from the right, 6 from behind.',
    oClock: (hour: string) => `${hour} o’clock`,
    heading: 'The first hole is played towards',
    force: 'Strength',
    forces,
    ground: 'Ground',
    grounds: { soft: 'Soft', normal: 'Normal', firm: 'Firm' },
    backupDue: (n: number) => `${counted(n, 'round is', 'rounds are')} on this device only.`,
    toBackup: 'To the backup',
    go: 'Start the round',
    goPractice: 'Start the session',
    starting: 'Starting …',
    wrong: 'Enter a number, or leave it empty.',
    outside: 'No round can hold this: check the number.',
    roundOpen: 'A round is being played already.',
    tooMany: (n: number) => `Not started: ${clubs(n)} are in the bag, and 14 is the most.`,
    notValid: (path: string) => `Not started: ${path} is outside what a round may hold.`,
    notFrozen: (why: string) => `Not started: the book could not be frozen. ${why}`,
  },
  weather: {
    noWind: 'no wind',
    wind: (from: string | null, strength: string) => (from === null ? `wind ${strength}` : `${from} wind, ${strength}`),
    ground: { soft: 'soft', normal: '', firm: 'firm' },
  },
  head: {
    hole: (n: number) => `Hole ${n}`,
    par: (n: number) => `par ${n}`,
    practice: 'Practice ground',
    previous: (n: number) => `Hole ${n}, the one before`,
    next: (n: number) => `Hole ${n}, the one after`,
    waiting: (n: number) => `${counted(n, 'shot is', 'shots are')} still open`,
    nextKey: (n: number) => `Hole ${n}`,
    toCard: 'To the card',
    roundOver: 'Round over',
  },
  hole: {
    goOn: 'Log here',
    allHoles: 'All holes',
    shots: 'Shots as entered',
    noShots: 'No shot is logged on this hole.',
    open: (missing: string) => `open: ${missing}`,
    missing: { club: 'club', lie: 'lie', measure: 'distance' },
    notSaved: 'not saved yet',
    putts: (n: number) => putts(n),
    score: 'Score',
    scoreOf: (n: number) => strokes(n),
    made: (made: { shots: number; putts: number; penalties: number }) =>
      [
        shots(made.shots),
        putts(made.putts),
        ...(made.penalties > 0 ? [counted(made.penalties, 'penalty stroke', 'penalty strokes')] : []),
      ].join(', '),
    notLogged: (n: number) => `${strokes(n)} of the score ${n === 1 ? 'is' : 'are'} not logged.`,
    overLogged: (n: number) => `${strokes(n)} more logged than the score noted: one of the two is wrong.`,
    par: 'Par',
    parOpen: 'open',
    length: (unit: string) => `Length, ${unit}`,
    ended: 'How it ended',
    results: { played: 'Played out', 'picked up': 'Picked up', conceded: 'Conceded' },
    puttsInAll: 'Putts',
    penalties: 'Other penalties',
    penaltiesNote: 'Penalty strokes beyond those of the shots.',
    noted: 'Score noted',
    notedNote: 'Only if strokes are missing in the log. Empty: the score is what was logged.',
    fewer: 'One fewer',
    more: 'One more',
    keep: 'Keep',
    notValid: 'No hole can hold this: check the number.',
    wrong: 'Enter a whole number, or leave it empty.',
  },
  shot: {
    title: (hole: number, n: number | null) =>
      n === null ? `Hole ${hole}, a provisional ball` : `Hole ${hole}, shot ${n}`,
    titlePractice: (n: number | null) => (n === null ? 'A shot' : `Shot ${n}`),
    gone: 'This shot is not in the logbook any more.',
    move: 'Move',
    delete: 'Delete',
    moveTitle: 'Move the shot',
    toHole: 'To hole',
    toPlace: 'To which place there?',
    first: 'Before all others',
    after: (n: string, what: string) => `After ${n}: ${what}`,
    only: 'As its only shot',
  },
  card: {
    title: 'The card',
    unnamed: 'A course without a name',
    sub: (date: string, tees: string, play: string) => [date, tees, play].filter((part) => part !== '').join(' · '),
    total: 'Total',
    strokes: 'Strokes',
    toPar: 'Against par',
    putts: 'Putts',
    penalties: 'Penalty strokes',
    shots: 'Shots logged',
    notLogged: 'Not logged',
    shotsIn: (n: number) => shots(n),
    thru: (n: number, of: number) => `${n} of ${holes(of)} over`,
    toParWords: toPar,
    holes: 'Holes',
    hole: 'Hole',
    openShots: (n: number) => (n === 1 ? '1 open' : `${n} open`),
    holeNotLogged: (n: number) => `${n} not logged`,
    goOn: 'Go on playing',
    over: 'Round over',
    overNote: 'Your shots then feed your book. It can be opened again.',
    overPractice: 'Session over',
    summary: 'Round over',
    summaryPractice: 'Session over',
    allComplete: 'No shot is left open.',
    reopen: 'Open it again',
    deleteRound: 'Delete the round',
    deleteNote: 'It stays in the bin for 30 days.',
    details: 'About this round',
    date: 'Day',
    keep: 'Keep',
    frozen: (at: string, hash: string) => `Book frozen ${at}, mark ${hash}.`,
  },
  rounds: {
    title: 'Earlier rounds',
    all: 'All earlier rounds',
    none: 'No round is in the logbook yet.',
    bin: 'The bin',
    score: (n: number, over: number, of: number) =>
      over === of ? strokes(n) : `${strokes(n)} on ${figure(over)} of ${holes(of)}`,
    holes: (n: number) => holes(n),
    playing: 'being played',
  },
  bin: {
    title: 'The bin',
    note: 'Deleted shots and rounds, kept for 30 days.',
    empty: 'The bin is empty.',
    round: (course: string, date: string, n: number) => `${course}, ${date}: a round with ${shots(n)}`,
    shot: (hole: number, what: string) => `Hole ${hole}: ${what}`,
    lostShot: 'a shot of a deleted round',
    deleted: (date: string) => `deleted ${date}`,
    back: 'Bring back',
    gone: 'Its round is not there. Bring the round back first.',
  },
} as const;
