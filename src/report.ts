import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { bookOf } from './book/composeBook.ts';
import { fitBook } from './book/fitBook.ts';
import { planSheets } from './book/planSheets.ts';
import { reportJson } from './book/reportJson.ts';
import { reportText, type SpokenLength } from './book/reportText.ts';
import { type CarrybookFile, logbookOf } from './exchange/carrybookFile.ts';
import { settledLogbook } from './exchange/merge.ts';
import { readAnyFile } from './exchange/readAnyFile.ts';
import { refusalSentence } from './exchange/refusal.ts';
import { dateField, instantField } from './golf/instant.ts';
import type { Player } from './golf/player.ts';
import { yardsFromMetres } from './units/yards.ts';

const USAGE = 'Usage: npm run --silent report -- FILE [--as-of 2026-10-01] [--json] [--plans]';

const lengths: Readonly<Record<Player['units'], SpokenLength>> = {
  yards: { unit: 'yards', of: yardsFromMetres },
  metres: { unit: 'metres', of: (length) => length },
};

/** What stops a report, told on stderr. */
class Stop extends Error {}

interface Request {
  readonly path: string;
  readonly asOf: string | undefined;
  readonly json: boolean;
  /** Bag, aim, practice and putting for every golfer of a team file too: about half a second each. */
  readonly plans: boolean;
}

/** A bare date means all of that day, UTC. */
function moment(text: string): string {
  if (dateField.safeParse(text).success) return `${text}T23:59:59.999Z`;
  if (instantField.safeParse(text).success) return text;
  throw new Stop(
    `--as-of: expected a day such as 2026-10-01 or an instant such as 2026-10-01T09:00:00Z, found ${text}\n${USAGE}`,
  );
}

function requestOf(args: readonly string[]): Request {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options: {
        'as-of': { type: 'string' },
        json: { type: 'boolean', default: false },
        plans: { type: 'boolean', default: false },
      },
      allowPositionals: true,
    });
    const [path, ...more] = positionals;
    if (path === undefined || more.length > 0)
      throw new Stop(`expected one file, found ${positionals.length}\n${USAGE}`);
    const asOf = values['as-of'];
    return { path, asOf: asOf === undefined ? undefined : moment(asOf), json: values.json, plans: values.plans };
  } catch (error) {
    if (error instanceof TypeError) throw new Stop(`${error.message}\n${USAGE}`);
    throw error;
  }
}

function textOf(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new Stop(`${path} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** Every golfer's file in a file of one golfer or a team. A team file with a broken logbook gives none. */
function filesIn(path: string): readonly CarrybookFile[] {
  const reading = readAnyFile(textOf(path));
  if (reading.kind === 'refused') {
    throw new Stop([`${path} is refused:`, ...reading.refusals.map(refusalSentence)].join('\n'));
  }
  const any = reading.value;
  if (any.kind === 'review') throw new Stop(`${path} is a review file: a report needs a golfer's or a team's file`);
  if (any.kind === 'carrybook') return [any.file];
  const broken = any.file.broken.flatMap(({ index, name, refusals }) => [
    `logbook ${index}${name === '' ? '' : ` (${name})`} is refused:`,
    ...refusals.map(refusalSentence),
  ]);
  if (broken.length > 0) throw new Stop([`${path} has broken logbooks:`, ...broken].join('\n'));
  return any.file.members.map(({ file }) => file);
}

/** The moment of the newest file. A team file without logbooks has none, and an empty report needs one. */
function newest(files: readonly CarrybookFile[], path: string): string {
  const instants = files.map((file) => file.exportedAt).sort((a, b) => Date.parse(a) - Date.parse(b));
  const last = instants.at(-1);
  if (last === undefined) throw new Stop(`${path} holds no logbook`);
  return last;
}

function report({ path, asOf: asked, json, plans }: Request): string {
  const files = filesIn(path);
  const asOf = asked ?? newest(files, path);
  const players = files.map((file) => {
    const logbook = settledLogbook(logbookOf(file));
    const fitted = fitBook(logbook, asOf);
    const sheets = files.length === 1 || plans ? [planSheets(logbook, fitted)] : [];
    return { playerId: logbook.player.id, logbook, book: bookOf(fitted), sheets };
  });
  if (json)
    return `${JSON.stringify(
      reportJson(
        asOf,
        players.map(({ playerId, book, sheets: [sheets] }) => ({ playerId, book, ...(sheets && { sheets }) })),
      ),
      null,
      2,
    )}\n`;
  return players
    .map(({ logbook, book, sheets: [sheets] }) => reportText(logbook, book, lengths[logbook.player.units], sheets))
    .join('\n\n');
}

try {
  process.stdout.write(report(requestOf(process.argv.slice(2))));
} catch (error) {
  if (!(error instanceof Stop)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
