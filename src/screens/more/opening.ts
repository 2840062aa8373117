import { signal } from '@preact/signals';
import { loadDemo } from '../../actions/loadDemo.ts';
import { saveSettings } from '../../actions/saveSettings.ts';
import type { Shelf } from '../../actions/shelf.ts';
import type { CarrybookFile } from '../../exchange/carrybookFile.ts';
import type { Refusal } from '../../exchange/refusal.ts';
import type { TeamFile } from '../../exchange/teamFile.ts';
import { permissions } from '../../golf/permissions.ts';
import { openRoundId } from '../../logbook/roundStore.ts';
import { compute } from '../../worker/compute.ts';
import { lookedAt } from '../openLogbook.ts';
import { goTo, replaceWith } from '../route.ts';
import { chosenUnit } from '../unit.ts';
import { words } from '../words.ts';
import { type DemoGolfer, demoSeason } from './demoSeason.ts';

/** How far the opening of a file has got. */
export type Opening =
  | { readonly kind: 'idle' }
  | { readonly kind: 'reading'; readonly name: string }
  | { readonly kind: 'refused'; readonly name: string; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly name: string; readonly why: string }
  | { readonly kind: 'choosing'; readonly name: string; readonly team: TeamFile };

/** The file being opened, or what came of the last one. What is on the screen stays until another is open. */
export const opening = signal<Opening>({ kind: 'idle' });

/** Puts away what came of the last file once it was seen; a file still being read goes on. */
export function forgetOutcome(): void {
  if (opening.peek().kind !== 'reading') opening.value = { kind: 'idle' };
}

/** A file bigger than any that could be read is not even loaded: twice the cap of a team file, bytes. */
const LARGEST_FILE = 400_000_000;

function failed(name: string, why: string): void {
  opening.value = { kind: 'failed', name, why };
}

/** Opens one logbook to be looked at: its numbers are shown as of the moment its file was written. */
export function openCarrybookFile(file: CarrybookFile): void {
  chosenUnit.value = null;
  lookedAt.value = { logbook: file, asOf: file.exportedAt, frozen: null, from: 'file' };
  opening.value = { kind: 'idle' };
  replaceWith('yardages');
}

/** Puts the file looked at away; the logbook of this phone is on the screen again. */
export function putFileAway(): void {
  chosenUnit.value = null;
  lookedAt.value = null;
}

async function openText(name: string, text: string): Promise<void> {
  const reading = await compute('readFile', text);
  if (reading.kind === 'refused') {
    opening.value = { kind: 'refused', name, refusals: reading.refusals };
  } else if (reading.value.kind === 'carrybook') {
    openCarrybookFile(reading.value.file);
  } else if (reading.value.kind === 'team') {
    opening.value = { kind: 'choosing', name, team: reading.value.file };
  } else {
    failed(name, words.open.review);
  }
}

async function openFrom(name: string, load: () => Promise<string | undefined>): Promise<void> {
  opening.value = { kind: 'reading', name };
  try {
    const text = await load();
    if (text !== undefined) await openText(name, text);
  } catch (error) {
    failed(name, words.open.notRead(error instanceof Error ? error.message : String(error)));
  }
}

/** Whether a round by the Rules is open on this phone: nothing is brought in from outside then. */
async function isByTheRules({ own }: Shelf): Promise<boolean> {
  const open = await own.connection.withDatabase(async (db) => {
    const id = await openRoundId(db);
    return id === null ? undefined : db.rounds.get(id);
  });
  return open.kind === 'ok' && !permissions(open.value ?? null).importing;
}

/** Reads a file of this device in the worker and opens it; what is wrong with it is shown on the opening page. */
export async function openGivenFile(shelf: Shelf, file: File): Promise<void> {
  goTo('open');
  await openFrom(file.name, async () => {
    if (await isByTheRules(shelf)) failed(file.name, words.open.byTheRules);
    else if (file.size > LARGEST_FILE) failed(file.name, words.open.tooLarge);
    else return file.text();
    return undefined;
  });
}

/** Puts a demo season on the demo's own shelf and shows it; where nothing can be kept it is looked at. */
async function showDemo(shelf: Shelf, name: string, text: string): Promise<void> {
  const reading = await compute('readFile', text);
  if (reading.kind === 'refused' || reading.value.kind !== 'carrybook') {
    failed(name, words.open.notRead(words.open.title));
    return;
  }
  const { file } = reading.value;
  // The demo's numbers are reckoned for the day its file was written; that is its last backup.
  const dated = await saveSettings(shelf.demo, { lastBackupAt: file.exportedAt });
  const loaded = dated.kind === 'saved' ? await loadDemo(shelf, text) : dated;
  if (loaded.kind === 'saved') {
    putFileAway();
    opening.value = { kind: 'idle' };
    goTo('yardages');
  } else if (loaded.kind === 'unsaved') openCarrybookFile(file);
  else failed(name, words.restore.why(loaded.why));
}

/** Fetches a demo season and shows it. */
export async function openDemo(shelf: Shelf, golfer: DemoGolfer): Promise<void> {
  const name = golfer === 'player' ? words.open.demoPlayer : words.open.demoCoach;
  opening.value = { kind: 'reading', name };
  if (await isByTheRules(shelf)) return failed(name, words.open.byTheRules);
  const season = await demoSeason(golfer);
  if (season.kind === 'fetched') await showDemo(shelf, name, season.text);
  else failed(name, season.why);
}
