/** Writes the scores of all worlds into DEVELOPERS.md: `npm run accuracy:table`, 300 golfers a world or the number given. */
import { readFileSync, writeFileSync } from 'node:fs';
import { composeBook } from '../../src/book/composeBook.ts';
import { scoreTable } from './bounds.ts';
import { scoreWorld } from './score.ts';
import { worlds } from './worlds.ts';

const FILE = 'DEVELOPERS.md';
const BEGIN = '<!-- accuracy -->';
const END = '<!-- /accuracy -->';

const golfers = Number(process.argv[2] ?? 300);
if (!Number.isInteger(golfers) || golfers < 1)
  throw new RangeError(`${process.argv[2]} golfers: a whole number is needed`);
const text = readFileSync(FILE, 'utf8');
const from = text.indexOf(BEGIN);
const to = text.indexOf(END);
if (from < 0 || to < from) throw new Error(`${FILE} has no ${BEGIN} … ${END} to write between`);

const table = scoreTable(
  worlds.map((world) => {
    console.error(`${world.name} …`);
    return scoreWorld(world, golfers, composeBook);
  }),
);
writeFileSync(FILE, `${text.slice(0, from + BEGIN.length)}\n${table}\n${text.slice(to)}`);
console.log(table);
