/**
 * Writes the scores of the synthetic golfers into DEVELOPERS.md: `npm run accuracy:table`, 300 golfers a world
 * and 400 a weather, or the number given; a second word, `worlds` or `weather`, writes that table only.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { composeBook } from '../../src/book/composeBook.ts';
import { scoreTable } from './bounds.ts';
import { scoreWorld } from './score.ts';
import { scoreSetting } from './weather/scoreSetting.ts';
import { settings } from './weather/settings.ts';
import { weatherTable } from './weather/weatherBounds.ts';
import { worlds } from './worlds.ts';

const FILE = 'DEVELOPERS.md';

const [given, only] = process.argv.slice(2);
const golfersOr = (usual: number) => {
  const golfers = Number(given ?? usual);
  if (!Number.isInteger(golfers) || golfers < 1) throw new RangeError(`${given} golfers: a whole number is needed`);
  return golfers;
};

/** Puts the table between its two marks; the file is read afresh, as scoring takes long. */
function write(mark: string, table: string): void {
  const text = readFileSync(FILE, 'utf8');
  const begin = `<!-- ${mark} -->`;
  const from = text.indexOf(begin);
  const to = text.indexOf(`<!-- /${mark} -->`);
  if (from < 0 || to < from) throw new Error(`${FILE} has no ${begin} … <!-- /${mark} --> to write between`);
  writeFileSync(FILE, `${text.slice(0, from + begin.length)}\n${table}\n${text.slice(to)}`);
  console.log(table);
}

function told<T>(name: string, score: () => T): T {
  console.error(`${name} …`);
  return score();
}

if (only !== 'weather') {
  const golfers = golfersOr(300);
  write('accuracy', scoreTable(worlds.map((w) => told(w.name, () => scoreWorld(w, golfers, composeBook)))));
}
if (only !== 'worlds') {
  const golfers = golfersOr(400);
  write('weather', weatherTable(settings.map((s) => told(s.world.name, () => scoreSetting(s, golfers)))));
}
