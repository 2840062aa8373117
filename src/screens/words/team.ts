import type { TakenIn } from '../../actions/takeIn.ts';
import type { ClubColumn } from '../../book/clubColumn.ts';
import type { NumberState } from '../../book/teamTable.ts';
import { refusalSentence } from '../../exchange/refusal.ts';
import { counted, figure, LOCALE, sure } from './figure.ts';
import { golfWords } from './golf.ts';
import { storageWords } from './storage.ts';

const list = new Intl.ListFormat(LOCALE, { style: 'long', type: 'conjunction' });

const kindShort: Record<ClubColumn['kind'], (mark: number) => string> = {
  driver: () => 'Driver',
  'fairway wood': (n) => `${figure(n)} wood`,
  hybrid: (n) => `${figure(n)} hybrid`,
  'driving iron': (n) => `${figure(n)} driving iron`,
  iron: (n) => `${figure(n)} iron`,
  wedge: (n) => `${figure(n)}°`,
  putter: () => 'Putter',
};

/** A club of the table: `7 iron`, `56°`. */
const club = ({ kind, mark }: ClubColumn): string => kindShort[kind](mark);

/** A column: `7 iron`, `56° 9:00`. */
const column = (of: ClubColumn, swing: string): string =>
  swing === 'full' ? (of.kind === 'wedge' ? `${club(of)} ${golfWords.swings.full}` : club(of)) : `${club(of)} ${swing}`;

const state: Record<NumberState, string> = {
  'no club': 'no such club',
  missing: 'no own shot',
  thin: 'few shots',
  stale: 'old',
  good: '',
};

function taken(one: TakenIn): string {
  switch (one.kind) {
    case 'read': {
      const { shots, rounds } = one.report;
      const gone = shots.removed > 0 ? `, ${figure(shots.removed)} removed` : '';
      return `${one.name || 'A golfer without a name'}: ${one.isNew ? 'new here. ' : ''}Shots ${figure(shots.new)} new, ${figure(shots.changed)} changed, ${figure(shots.same)} same${gone}; rounds ${figure(rounds.new)} new.`;
    }
    case 'summary':
      return `${one.name || 'A golfer without a name'}: numbers without shots${one.isNewer ? '.' : ', no newer than those here.'}`;
    case 'blocked':
      return `${one.name || 'A golfer'} was deleted from this device, so the book was not taken in.`;
    case 'refused':
      return `${one.name ? `${one.name}’s book was refused: ` : 'Refused: '}${one.refusals.slice(0, 3).map(refusalSentence).join('; ')}`;
    case 'review':
      return 'This is a coach’s review. The golfer it was written for opens it under “My coach’s words”.';
    case 'unsaved':
      return `${one.name || 'A book'} was not kept: ${storageWords.why(one.why)}`;
  }
}

/** Every text of the team's table and of taking books in. */
export const teamWords = {
  title: 'Team',
  sub: (n: number) =>
    n === 0 ? 'Books that golfers handed to you' : `${counted(n, 'golfer', 'golfers')} on this device`,
  unnamed: 'Unnamed',
  nth: (name: string, nth: number) => `${name} (${figure(nth)})`,
  opening: 'Opening the team …',
  trouble: (why: string) => `The team’s books are out of reach. ${why}`,
  club,
  column,
  state,
  days: (n: number) => counted(n, 'day', 'days'),
  daysOld: (n: number) => `${figure(n)} d old`,
  reckoning: (n: number) => `Reckoning ${counted(n, 'book', 'books')} …`,
  notReckoned: (name: string, why: string) => `${name}’s book could not be reckoned: ${why}`,
  byTheRules:
    'A round by the Rules is being played on this device: no book but the frozen card is shown, and nothing is brought in or handed out. Close the round first.',
  takeIn: {
    title: 'Take books in',
    what: 'Files that golfers handed over, as many at once as you like. They are read on this device and kept on it, apart from your own logbook; nothing goes anywhere else.',
    pick: 'Choose files',
    drop: 'Or drop them anywhere on this page, or paste one.',
    pasted: 'what was pasted',
    codes: 'what was read off codes',
    read: (done: number, all: number) => `${figure(done)} of ${counted(all, 'file', 'files')} read`,
    cancel: 'Leave the rest out',
    away: 'Put this list away',
    waiting: 'waiting',
    reading: 'reading …',
    left: 'left out',
    failed: (why: string) => `could not be read: ${why}`,
    tooLarge: 'it is larger than any book that can be read',
    passphrase: 'Passphrase',
    open: 'Open it',
    wrongPassphrase: 'That is not the passphrase it was sealed with.',
    sealed: {
      tampered: 'the passphrase is right, but the file was changed after it was sealed. Ask for it again, another way.',
      damaged: 'the file is damaged: it was cut short or garbled on the way. Ask for it again.',
      'newer version': 'it was sealed by a newer version of the app than this one.',
    },
    taken,
    allow: 'Take this golfer in again',
    allowed: 'Allowed. Choose the file once more.',
  },
  look: {
    title: 'What to look at',
    search: 'Name',
    group: 'Group',
    everybody: 'Everybody',
    columns: 'Numbers',
    columnSets: { full: 'Full swings', wedges: 'Wedges', one: 'One number' },
    column: 'The number asked about',
    show: 'Golfers',
    shows: {
      all: 'all',
      none: 'with no own number there',
      weak: 'with numbers missing, thin or old',
      gaps: 'with a wide gap or an overlap',
      silent: 'with nothing logged for two weeks',
      tasks: 'with a task that is not done',
    },
    order: 'In order of',
    orders: { need: 'need', name: 'name', silent: 'last logged', carry: 'carry there' },
    views: 'Kept views',
    viewName: 'Name of this view',
    keep: 'Keep this view',
    kept: 'Kept.',
    remove: (name: string) => `Remove the view ${name}`,
    noName: 'It needs a name.',
  },
  answer: {
    none: (n: number, all: number, number: string, names: readonly string[]) =>
      n === 0
        ? `Everybody shown has a number of their own for ${number}.`
        : `${figure(n)} of ${figure(all)} have no number of their own for ${number}: ${list.format(names)}.`,
    shown: (n: number, all: number) => `${figure(n)} of ${counted(all, 'golfer', 'golfers')} shown.`,
    nobody: 'Nobody fits.',
  },
  table: {
    label: 'Golfers and their numbers',
    name: 'Golfer',
    need: 'Wants work',
    needs: (missing: number, stale: number, thin: number) =>
      [
        ...(missing > 0 ? [`${figure(missing)} missing`] : []),
        ...(stale > 0 ? [`${figure(stale)} old`] : []),
        ...(thin > 0 ? [`${figure(thin)} thin`] : []),
      ].join(', ') || 'nothing',
    gaps: (wide: number, overlaps: number) =>
      [
        ...(wide > 0 ? [counted(wide, 'wide gap', 'wide gaps')] : []),
        ...(overlaps > 0 ? [counted(overlaps, 'overlap', 'overlaps')] : []),
      ].join(', '),
    silent: (days: number | null) =>
      days === null ? 'nothing logged yet' : days === 0 ? 'logged today' : `logged ${counted(days, 'day', 'days')} ago`,
    change: (n: string) => `${n} since your review`,
    plusMinus: 'plus or minus',
    shots: (n: number) => counted(n, 'shot', 'shots'),
    key: (unit: string) =>
      `Large: stock carry in ${unit}. Small: ±, 8 in 10 sure, then own shots. ~ borrowed, no own shot. Few: fewer than five. Old: last hit more than six weeks ago.`,
  },
  links: {
    title: 'Also',
    two: 'Two bags side by side',
    groups: 'Groups',
    sheet: 'Team sheet on paper, and as a table file',
    care: 'Who is on this device, and minors’ data',
    share: 'Hand my own book over',
    words: 'My coach’s words',
  },
  empty:
    'Nobody is here yet. A golfer hands their book over from the Team place of their own phone; you take the file in here. Your own logbook stays as it is.',
  player: {
    gone: 'This golfer is not on this device.',
    back: 'Back to the team',
    sub: (rounds: number, shots: number, day: string) =>
      `${counted(rounds, 'round', 'rounds')}, ${counted(shots, 'shot', 'shots')} · as of ${day}`,
    summaryOnly: (day: string) => `Numbers without shots · as of ${day}`,
    ahead: (days: number) =>
      `The clock of this golfer’s phone was ${counted(days, 'day', 'days')} ahead when the file was written, so the numbers are reckoned for today. No shot is lost by that.`,
    see: 'See the book as the golfer sees it',
    numbers: 'Numbers',
    last: (day: string) => `last ${day}`,
    spread: (lo: string, hi: string) => `8 of the next 10 balls ${lo} to ${hi}`,
    gaps: 'Gaps worth a word',
    wide: (longer: string, shorter: string, gap: string, p: number) =>
      `${longer} to ${shorter}: ${gap} apart, a wide gap (${sure(p)} likely).`,
    overlap: (longer: string, shorter: string, p: number) =>
      `${longer} and ${shorter}: the same distance (${sure(p)} likely).`,
    noGaps: 'None.',
    scoring: 'Scoring, last twelve months',
    average: (what: string, mean: string, of: string) => `${what} ${mean} (${of})`,
    holes: (n: number) => counted(n, 'hole', 'holes'),
    nines: (n: number) => counted(n, 'nine', 'nines'),
    pars: ['Par 3', 'Par 4', 'Par 5'],
    aNine: 'Over nine holes, to par',
    putts: 'Putts a hole',
    noScores: 'No complete hole with a par yet.',
    looked: (at: string) => `You noted a review on ${at}; changes are told since then.`,
    neverLooked: 'You have not noted a review yet.',
    noteLooked: 'Note that I reviewed this golfer now',
    remove: 'To who is on this device',
    removeSays:
      'A golfer is deleted under “Who is on this device”: the book, the numbers and what you wrote go. The golfer’s own phone keeps everything. An old file does not bring them back.',
  },
} as const;
