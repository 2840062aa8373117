import { byText } from './canonicalJson.ts';
import { type CarrybookFile, readCarrybookValue, writeCarrybookFile } from './carrybookFile.ts';
import {
  headRefusal,
  LOGBOOK_BYTES,
  objectReading,
  parseDocument,
  sizeRefusal,
  structureRefusals,
  utf8Bytes,
} from './documentText.ts';
import { foundWords, pathText, quoted, type Reading, type Refusal, refused, WHOLE_FILE } from './refusal.ts';

/** Largest team file, in bytes of UTF-8. */
export const TEAM_BYTES = 200_000_000;

/** Most golfers in one team file. Own choice: far above any squad. */
export const TEAM_LIMIT = 1000;

/** A logbook of a team file that reads. */
export interface TeamMember {
  /** Place in the file's list, from 0. */
  readonly index: number;
  readonly file: CarrybookFile;
}

/** A logbook of a team file that is broken: whose it seems to be, and why it cannot be read. */
export interface BrokenMember {
  readonly index: number;
  /** The nickname as far as it can be made out; empty when it cannot. */
  readonly name: string;
  readonly refusals: readonly Refusal[];
}

/** A team file: the logbooks that read, and the broken ones by name. */
export interface TeamFile {
  readonly format: 'carrybook-team';
  readonly version: 1;
  readonly members: readonly TeamMember[];
  readonly broken: readonly BrokenMember[];
}

function nicknameOf(value: unknown): string {
  const player = (value as { player?: { name?: unknown } } | null)?.player;
  return typeof player?.name === 'string' ? quoted(player.name) : '';
}

/** Why a logbook is too big for one golfer; null when it is not. One that is built wrong is not written to be measured. */
function tooBigReading(logbook: unknown, path: readonly PropertyKey[], bytes: number): Reading<never> | null {
  // A file below the limit of one logbook cannot hold a logbook above it.
  if (bytes <= LOGBOOK_BYTES || structureRefusals(logbook).length > 0) return null;
  const tooBig = sizeRefusal(utf8Bytes(JSON.stringify(logbook)), LOGBOOK_BYTES, pathText(path));
  return tooBig ? refused([tooBig]) : null;
}

/** Reads a team file that is parsed already. One broken logbook leaves the others as they are. */
export function readTeamValue(value: unknown, bytes: number): Reading<TeamFile> {
  const head = objectReading(value);
  if (head.kind === 'refused') return head;
  const wrongHead = headRefusal(head.value, 'carrybook-team');
  if (wrongHead) return refused([wrongHead]);
  const { logbooks } = head.value;
  if (!Array.isArray(logbooks)) {
    return refused([{ path: 'logbooks', expected: 'a list of Carrybook files', found: foundWords(logbooks) }]);
  }
  if (logbooks.length > TEAM_LIMIT) {
    const found = `${logbooks.length}`;
    return refused([{ path: 'logbooks', expected: `at most ${TEAM_LIMIT} logbooks`, found }]);
  }
  const members: TeamMember[] = [];
  const broken: BrokenMember[] = [];
  for (const [index, logbook] of logbooks.entries()) {
    const path = ['logbooks', index];
    const reading = tooBigReading(logbook, path, bytes) ?? readCarrybookValue(logbook, path);
    if (reading.kind === 'read') members.push({ index, file: reading.value });
    else broken.push({ index, name: nicknameOf(logbook), refusals: reading.refusals });
  }
  return { kind: 'read', value: { format: 'carrybook-team', version: 1, members, broken } };
}

/** Reads a team file: one Carrybook file a golfer inside. */
export function readTeamFile(text: string): Reading<TeamFile> {
  const bytes = utf8Bytes(text);
  const tooBig = sizeRefusal(bytes, TEAM_BYTES, WHOLE_FILE);
  if (tooBig) return refused([tooBig]);
  const parsed = parseDocument(text);
  return parsed.kind === 'refused' ? parsed : readTeamValue(parsed.value, bytes);
}

/** Writes a team file: the golfers' files sorted by the player's id. */
export function writeTeamFile(files: readonly CarrybookFile[]): string {
  const logbooks = [...files].sort((a, b) => byText(a.player.id, b.player.id)).map(writeCarrybookFile);
  return `{\n"format": "carrybook-team",\n"version": 1,\n"logbooks": [\n${logbooks.join(',\n')}]\n}\n`;
}
