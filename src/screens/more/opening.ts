import { signal } from '@preact/signals';
import type { CarrybookFile } from '../../exchange/carrybookFile.ts';
import type { Refusal } from '../../exchange/refusal.ts';
import type { TeamFile } from '../../exchange/teamFile.ts';
import { compute } from '../../worker/compute.ts';
import { openLogbook } from '../openLogbook.ts';
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

/** The file being opened, or what came of the last one. The open logbook stays as it is until another is open. */
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

/** Opens one logbook: its numbers are shown as of the moment its file was written. */
export function openCarrybookFile(file: CarrybookFile): void {
  chosenUnit.value = null;
  openLogbook.value = { logbook: file, asOf: file.exportedAt };
  opening.value = { kind: 'idle' };
  replaceWith('yardages');
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

/** Reads a file of this device in the worker and opens it; what is wrong with it is shown on the opening page. */
export async function openGivenFile(file: File): Promise<void> {
  goTo('open');
  await openFrom(file.name, async () => {
    if (file.size <= LARGEST_FILE) return file.text();
    failed(file.name, words.open.tooLarge);
    return undefined;
  });
}

/** Fetches a demo season and opens it. */
export async function openDemo(golfer: DemoGolfer): Promise<void> {
  const name = golfer === 'player' ? words.open.demoPlayer : words.open.demoCoach;
  await openFrom(name, async () => {
    const season = await demoSeason(golfer);
    if (season.kind === 'fetched') return season.text;
    failed(name, season.why);
    return undefined;
  });
}
