/** Writes the scores of all weathers into DEVELOPERS.md: `npm run weather:table`, 400 golfers a setting or the number given. */
import { readFileSync, writeFileSync } from 'node:fs';
import { scoreSetting } from './scoreSetting.ts';
import { settings } from './settings.ts';
import { weatherTable } from './weatherBounds.ts';

const FILE = 'DEVELOPERS.md';
const BEGIN = '<!-- weather -->';
const END = '<!-- /weather -->';

const golfers = Number(process.argv[2] ?? 400);
if (!Number.isInteger(golfers) || golfers < 1)
  throw new RangeError(`${process.argv[2]} golfers: a whole number is needed`);
const table = weatherTable(
  settings.map((setting) => {
    console.error(`${setting.world.name} …`);
    return scoreSetting(setting, golfers);
  }),
);
const text = readFileSync(FILE, 'utf8');
const from = text.indexOf(BEGIN);
const to = text.indexOf(END);
if (from < 0 || to < from) throw new Error(`${FILE} has no ${BEGIN} … ${END} to write between`);
writeFileSync(FILE, `${text.slice(0, from + BEGIN.length)}\n${table}\n${text.slice(to)}`);
console.log(table);
