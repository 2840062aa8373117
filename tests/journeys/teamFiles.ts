import { carrybookFileOf, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import type { Club } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { clubOf, logbookOf, roundOf, shotOf } from '../book/logbooks.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';

/** A file as a picker or a drop hands it over. */
export interface GivenFile {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

const EXPORTED_AT = '2026-06-30T20:00:00Z';
/** Invented nicknames. */
export const NICKNAMES = [
  'Wren',
  'Sorrel',
  'Teasel',
  'Bracken',
  'Yarrow',
  'Plover',
  'Linnet',
  'Dunlin',
  'Heron',
  'Martin',
  'Rowan',
  'Wren',
] as const;

const bag = (without56: boolean): Club[] => [
  clubOf('dr', 'driver', 10.5, { name: 'Driver' }),
  clubOf('w3', 'fairway wood', 15, { name: '3 wood' }),
  clubOf('h4', 'hybrid', 22, { name: '4 hybrid' }),
  ...[5, 6, 7, 8, 9].map((n) => clubOf(`i${n}`, 'iron', 10.5 + n * 3.5, { name: `${n} iron` })),
  clubOf('pw', 'wedge', 46, { name: 'PW' }),
  clubOf('w50', 'wedge', 50, { name: '50°' }),
  ...(without56 ? [] : [clubOf('w56', 'wedge', 56, { name: '56°' })]),
  clubOf('w60', 'wedge', 60, { name: '60°' }),
  clubOf('pt', 'putter', 3, { name: 'Putter' }),
];

/** Usual carry of a full swing by loft for an invented school golfer, m. Invented. */
const stock = (loft: number): number => 245 - 2.7 * loft;
const SHARE: Readonly<Record<string, number>> = { full: 1, '10:30': 0.88, '9:00': 0.75, '7:30': 0.55 };

/**
 * An invented golfer's season. Every club and swing is played but 9:00 with the 56° by those `without900`.
 *
 * @param shots in all, over rounds a week apart.
 */
export function seasonOf(
  id: string,
  name: string,
  shots: number,
  how: { without900?: boolean; without56?: boolean } = {},
): Logbook {
  const numbers = randomNumbers(`team ${id}`);
  const clubs = bag(how.without56 ?? false);
  const played = clubs.filter(({ kind }) => kind !== 'putter');
  const cells = played
    .flatMap((club) => (club.kind === 'wedge' ? Object.keys(SHARE) : ['full']).map((swing) => ({ club, swing })))
    .filter(({ club, swing }) => !(how.without900 && club.id === 'w56' && swing === '9:00'));
  const perRound = 60;
  const count = Math.ceil(shots / perRound);
  const day = (r: number) =>
    new Date(Date.parse('2026-06-28') - (count - 1 - r) * 7 * 86_400_000).toISOString().slice(0, 10);
  const rounds = Array.from({ length: count }, (_, r) =>
    roundOf(`${id}-r${r}`, day(r), {
      play: 'casual',
      holes: Array.from({ length: 9 }, (_, h) => ({ number: h + 1, par: 3 + (h % 3), strokes: 4 + ((h + r) % 3) })),
    }),
  );
  const list = Array.from({ length: shots }, (_, k) => {
    const { club, swing } = cells[k % cells.length];
    const loft = club.specPeriods[0].loft_deg;
    return shotOf(`${id}-s${k}`, {
      roundId: `${id}-r${Math.floor(k / perRound)}`,
      hole: 1 + (k % 9),
      number: 1 + Math.floor((k % perRound) / 9),
      clubId: club.id,
      swing,
      lie: club.kind === 'driver' ? 'tee' : 'fairway',
      strike: 'solid',
      carry: { m: Math.round(10 * stock(loft) * SHARE[swing] * Math.exp(numbers.normal(0, 0.04))) / 10, by: 'laser' },
      changedAt: '2026-06-28T12:00:00Z',
      device: `phone-${id}`,
    });
  });
  const logbook = logbookOf({ clubs, rounds, shots: list });
  return { ...logbook, player: { ...logbook.player, id, name, changedAt: '2026-06-01T12:00:00Z' } };
}

export function givenFile(name: string, text: string): GivenFile {
  return { name, mimeType: 'application/json', buffer: Buffer.from(text) };
}

/** Twelve golfers' files: two of one nickname, four with no own 9:00 number for the 56°, one without the club. */
export function twelveFiles(shots = 240): GivenFile[] {
  return NICKNAMES.map((name, i) => {
    const season = seasonOf(`golfer-${i}`, name, shots, { without900: i % 3 === 1, without56: i === 5 });
    return givenFile(`book-${i}.json`, writeCarrybookFile(carrybookFileOf(season, EXPORTED_AT, 'share')));
  });
}

/** A file that means harm: a key that reaches a prototype, and a name that would be a script. */
export const hostileFile = givenFile(
  'book-x.json',
  '{"format":"carrybook","player":{"id":"x","name":"<img src=x onerror=alert(1)>","__proto__":{"isAdmin":true}}}',
);
