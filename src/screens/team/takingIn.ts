import { signal } from '@preact/signals';
import { type TakenIn, takeInFile } from '../../actions/takeIn.ts';
import { isSealed, unsealText } from '../../exchange/sealedFile.ts';
import { compute } from '../../worker/compute.ts';
import { teamWords } from '../words/team.ts';
import { sealingTools } from './sealingTools.ts';
import { teamKeeper } from './teamKeeper.ts';

/** How far one file has come. */
export type FileState =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'reading' }
  /** It wants its passphrase; `wrong` says what came of the last one. */
  | { readonly kind: 'sealed'; readonly text: string; readonly wrong: string | null }
  | { readonly kind: 'done'; readonly taken: readonly TakenIn[] }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'left' };

/** One file on its way into the team. */
export interface FileLine {
  readonly id: number;
  readonly name: string;
  readonly state: FileState;
}

/** Something that gives the text of a file. */
export interface Incoming {
  readonly name: string;
  readonly size: number;
  readonly text: () => Promise<string>;
}

/** The files being taken in, or what came of the last ones. */
export const fileLines = signal<readonly FileLine[]>([]);

/** A file bigger than any that could be read is not even loaded: twice the cap of a team file, bytes. */
const LARGEST_FILE = 400_000_000;

const work = {
  memberTexts: (text: string) => compute('memberTexts', text),
  takeInMember: (...args: Parameters<typeof import('../../exchange/takeInMember.ts').takeInMember>) =>
    compute('takeInMember', ...args),
};

let isCancelled = false;
let running: Promise<void> = Promise.resolve();
let lastId = 0;

function setState(id: number, state: FileState): void {
  fileLines.value = fileLines.peek().map((line) => (line.id === id ? { ...line, state } : line));
}

async function takeInText(id: number, text: string): Promise<void> {
  if (isSealed(text)) setState(id, { kind: 'sealed', text, wrong: null });
  else setState(id, { kind: 'done', taken: await takeInFile(teamKeeper, work, text) });
}

async function takeInOne(id: number, file: Incoming): Promise<void> {
  if (isCancelled) return setState(id, { kind: 'left' });
  setState(id, { kind: 'reading' });
  try {
    if (file.size > LARGEST_FILE) setState(id, { kind: 'failed', why: teamWords.takeIn.tooLarge });
    else await takeInText(id, await file.text());
  } catch (error) {
    setState(id, { kind: 'failed', why: error instanceof Error ? error.message : String(error) });
  }
}

/** Takes files in, one after the other in the worker; what came of each stands on its own line. */
export function takeInFiles(files: readonly Incoming[]): Promise<void> {
  if (files.length === 0) return running;
  const isIdle = fileLines.peek().every(({ state }) => state.kind !== 'waiting' && state.kind !== 'reading');
  const before = isIdle ? fileLines.peek().filter(({ state }) => state.kind === 'sealed') : fileLines.peek();
  if (isIdle) isCancelled = false;
  const lines = files.map((file) => {
    lastId += 1;
    return { file, line: { id: lastId, name: file.name, state: { kind: 'waiting' } } as const };
  });
  fileLines.value = [...before, ...lines.map(({ line }) => line)];
  running = running.then(async () => {
    for (const { file, line } of lines) await takeInOne(line.id, file);
  });
  return running;
}

/** Leaves out the files not begun yet. The one being read is finished: a book is taken in whole or not at all. */
export function cancelTakingIn(): void {
  isCancelled = true;
}

/** Opens a sealed file with its passphrase and takes it in. */
export async function openSealed(line: FileLine, passphrase: string): Promise<void> {
  const { state } = line;
  if (state.kind !== 'sealed') return;
  const opened = await unsealText(state.text, passphrase, sealingTools);
  if (opened.kind === 'opened') await takeInText(line.id, opened.text);
  else if (opened.kind === 'wrong passphrase') setState(line.id, { ...state, wrong: teamWords.takeIn.wrongPassphrase });
  else setState(line.id, { kind: 'failed', why: teamWords.takeIn.sealed[opened.kind] });
}

/** Puts away what came of the last files. */
export function forgetLines(): void {
  fileLines.value = fileLines.peek().filter(({ state }) => state.kind === 'waiting' || state.kind === 'reading');
}
