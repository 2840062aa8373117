/*
 * Writes the demo season: two invented golfers on two invented courses from a cold March to a warm July, as
 * Carrybook files. Everything in it is made up, by seeded numbers, so that every run writes the same files; what
 * the clubs truly carry stands in people.ts and reaches the tests through truth.ts. Run by `npm run demo:make`.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoFiles } from './logbooks.ts';

const folder = join(process.cwd(), 'demo');
if (!existsSync(folder))
  throw new RangeError(`no folder demo in ${process.cwd()}: run it from the root of the project`);
for (const [name, text] of demoFiles()) {
  writeFileSync(join(folder, name), text);
  console.log(`demo/${name}: ${text.length} characters`);
}
