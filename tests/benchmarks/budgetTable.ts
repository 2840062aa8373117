/** Puts what the bench in Chromium measured last into DEVELOPERS.md, between its marks. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const FILE = 'DEVELOPERS.md';
const MEASURED = 'test-results/budgets.md';
const BEGIN = '<!-- budgets -->';
const END = '<!-- /budgets -->';

if (!existsSync(MEASURED)) throw new Error(`There is no ${MEASURED}: run \`npm run bench\` first`);
const text = readFileSync(FILE, 'utf8');
const from = text.indexOf(BEGIN);
const to = text.indexOf(END);
if (from < 0 || to < from) throw new Error(`${FILE} has no ${BEGIN} … ${END} to write between`);
const table = readFileSync(MEASURED, 'utf8').trim();
writeFileSync(FILE, `${text.slice(0, from + BEGIN.length)}\n${table}\n${text.slice(to)}`);
console.log(table);
