import { type CarrybookFile, logbookOf, readCarrybookFile } from '../exchange/carrybookFile.ts';
import { settledLogbook } from '../exchange/merge.ts';
import type { MergeReport } from '../exchange/mergeReport.ts';
import type { Refusal } from '../exchange/refusal.ts';
import { NEVER_CHANGED } from '../golf/instant.ts';
import type { Logbook } from '../golf/logbook.ts';
import { readLogbook } from '../logbook/readLogbook.ts';
import { mergeIn, replaceLogbook } from '../logbook/replaceLogbook.ts';
import { heldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Outcome, refuse, written } from './outcome.ts';
import { write } from './write.ts';

/** How much longer than a shot a whole logbook may take to be written before the connection counts as lost. */
const PATIENCE_TIMES = 12;

/** Why a file was not restored; nothing was written. */
export type RestoreRefusal =
  | { readonly kind: 'unreadable'; readonly refusals: readonly Refusal[] }
  /** The file was made to be shared and has left something out. */
  | { readonly kind: 'share' }
  /** Merging is for two logbooks of one golfer. */
  | { readonly kind: 'another player'; readonly name: string }
  /** Nothing is imported during a round by the Rules. */
  | { readonly kind: 'round by the Rules' };

/** What was restored: the records of the file, and for a merge what it did to those here. */
export interface Restored {
  readonly clubs: number;
  readonly rounds: number;
  readonly shots: number;
  readonly merge: MergeReport | null;
}

function isUntouched(logbook: Logbook): boolean {
  const { player, clubs, rounds, shots, reviews } = logbook;
  return player.changedAt === NEVER_CHANGED && [clubs, rounds, shots, reviews].every((list) => list.length === 0);
}

function countsOf(file: CarrybookFile, merge: MergeReport | null): Restored {
  return { clubs: file.clubs.length, rounds: file.rounds.length, shots: file.shots.length, merge };
}

/**
 * Restores a backup, all of it or nothing: in place of the logbook here, or merged into it. Merging
 * into a logbook nobody has written in yet takes the file's golfer over.
 */
export function restoreBackup(
  keeper: Keeper,
  text: string,
  how: 'replace' | 'merge',
): Promise<Outcome<Restored, RestoreRefusal>> {
  return keeper.line.after(async (): Promise<Outcome<Restored, RestoreRefusal>> => {
    const reading = readCarrybookFile(text);
    if (reading.kind === 'refused') return refuse({ kind: 'unreadable', refusals: reading.refusals });
    const file = reading.value;
    if (file.scope === 'share') return refuse({ kind: 'share' });
    const logbook = settledLogbook(logbookOf(file));
    return write<Restored, RestoreRefusal>(
      keeper,
      async (pen) => {
        if (await heldBack(pen.db, { kind: 'import' })) return refuse({ kind: 'round by the Rules' });
        const here = await readLogbook(pen.db);
        if (how === 'replace' || isUntouched(here)) {
          await replaceLogbook(pen.db, logbook);
          return written(countsOf(file, null));
        }
        if (here.player.id !== file.player.id) return refuse({ kind: 'another player', name: file.player.name });
        return written(countsOf(file, await mergeIn(pen.db, logbook)));
      },
      PATIENCE_TIMES,
    );
  });
}
