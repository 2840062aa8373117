import type { Clause } from '../../golf/clause.ts';

/** One line of the referee sheet: a part of the app, what it does in a round by the Rules, and under which clause. */
export interface RefereeLine {
  readonly where: string;
  readonly does: string;
  readonly clause: Clause | null;
}

/** Clauses in our own words. Source: R&A and USGA, Rules of Golf (2023), from memory. */
const clause: Record<Clause, string> = {
  '4.1a(2)': 'A club damaged in the round, not in anger, may be used on, repaired or replaced.',
  '4.1a(3)': 'How a club plays may not be changed on purpose during the round.',
  '4.1b':
    'At most fourteen clubs. Who starts with fewer may add up to fourteen, but nothing built from carried parts and no club of somebody playing.',
  '4.1c': 'A club too many is taken out of play at once, before the next stroke, and stays out.',
  '4.3a':
    'Distances and what was known before the round may be used, and play may be noted for afterwards. Height and wind may not be measured, nor may the play of this round be worked into numbers or into a choice of club.',
  '5.7': 'Play that is stopped is still the same round.',
  'G-5': 'A Local Rule that allows no device to measure distance.',
};

/** In the order of the places in the app. */
const lines: readonly RefereeLine[] = [
  {
    where: 'Start of the round',
    does: 'Freezes the book of earlier rounds and shows its time and mark. Starts with fourteen clubs or fewer.',
    clause: '4.1b',
  },
  {
    where: 'Round, logging a shot',
    does: 'Takes down what the player enters. No club is proposed and no carry, average or trend of this round is worked out until “round over”.',
    clause: '4.3a',
  },
  {
    where: 'Round, hole and card',
    does: 'Shots as they were entered, and the score.',
    clause: '4.3a',
  },
  {
    where: 'Marks by satellite',
    does: 'Notes the place of ball, pitch and rest for after the round. Height is never read and no distance is shown.',
    clause: '4.3a',
  },
  {
    where: 'Switch “Distance devices not allowed here”',
    does: 'The receiver is not asked for anything in this round.',
    clause: 'G-5',
  },
  {
    where: 'Yardages',
    does: 'The frozen card, the same on every hole. No search for a number, no nearest number, no adjustment to weather, height or slope.',
    clause: '4.3a',
  },
  {
    where: 'Bag, a club added or replaced',
    does: 'A club comes in only for a player who started with fewer than fourteen, up to fourteen. Anything else is refused with this clause.',
    clause: '4.1b',
  },
  {
    where: 'Bag, a club damaged',
    does: 'One club takes the place of another only when the player says that it was damaged in the round and not in anger. A repair needs no entry.',
    clause: '4.1a(2)',
  },
  {
    where: 'Bag, a club’s build',
    does: 'No kind, loft, lie, length, shaft or head of a club of this round is changed, and neither is what the player says it carries.',
    clause: '4.1a(3)',
  },
  {
    where: 'Bag, a fifteenth club found',
    does: 'It can be taken out of play at any time; who started with fourteen cannot put it back, not by undo either.',
    clause: '4.1c',
  },
  {
    where: 'Undo, bin, earlier rounds',
    does: 'What was done in this round can be taken back. Rounds, shots and clubs from before it stay as they are, as the frozen book rests on them.',
    clause: '4.3a',
  },
  {
    where: 'Files, demo, books of others',
    does: 'No file is read in or looked at and no demo opened, and nothing is handed over until “round over”. A backup can be saved on the player’s own device.',
    clause: '4.3a',
  },
  {
    where: 'Settings',
    does: 'Light, hand and units can be changed. None of them shows another number.',
    clause: '4.3a',
  },
  {
    where: 'Stoppage, reload, new version',
    does: 'The round stays open and the book frozen, whatever the phone does. No new version is taken while it is open; should the phone bring one in after closing the app, the mark tells whether the card is still the frozen one.',
    clause: '5.7',
  },
  {
    where: 'No phone allowed',
    does: 'The card and a shot sheet are printed before, and the shots entered after the round.',
    clause: null,
  },
];

/** Every text of the referee sheet. */
export const refereeWords = {
  title: 'Referee sheet',
  lead: 'What this app does during a round by the Rules, place by place, with the clause it keeps to. For a referee, a Committee or a coach who asks.',
  decides:
    'The Committee and the school association decide whether a phone and this app may be used. Ask before the round.',
  source:
    'Rules of Golf 2023, in our own words and from memory: the book itself decides. Where a rule leaves room, the narrower reading was taken.',
  lines,
  clauses: 'The clauses',
  clause,
  clauseName: (name: Clause) => (name === 'G-5' ? 'Local Rule G-5' : `Rule ${name}`),
  noClause: 'own choice',
  table: { where: 'Where', does: 'In a round by the Rules', clause: 'Clause' },
  now: {
    none: 'No round by the Rules is open now.',
    open: (started: string) => `A round by the Rules is open, begun ${started}.`,
    frozen: (at: string, hash: string) => `Book frozen ${at}, mark ${hash}.`,
    devices: 'Distance devices are switched off for it.',
    clubs: (n: number) => `Started with ${n === 1 ? '1 club' : `${n} clubs`}.`,
  },
  print: 'Print this page',
} as const;
