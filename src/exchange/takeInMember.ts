import type { Logbook } from '../golf/logbook.ts';
import { type SeasonSpan, withoutSeasons } from '../golf/seasonSpan.ts';
import { type CarrybookFile, carrybookFileOf, logbookOf, writeCarrybookFile } from './carrybookFile.ts';
import { settledLogbook } from './merge.ts';
import { type MergeReport, mergeReport } from './mergeReport.ts';
import { readAnyFile } from './readAnyFile.ts';
import type { Refusal } from './refusal.ts';
import type { BrokenMember } from './teamFile.ts';

/** One golfer's book inside a file of any kind, as text of its own. */
export interface MemberText {
  readonly playerId: string;
  readonly name: string;
  readonly text: string;
}

/** What a file holds for a coach. */
export type TeamTexts =
  | { readonly kind: 'members'; readonly members: readonly MemberText[]; readonly broken: readonly BrokenMember[] }
  | { readonly kind: 'review'; readonly playerId: string }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

/** A golfer's stored book after a file was taken in. */
export interface TakenMember {
  readonly text: string;
  readonly name: string;
  readonly asOf: string;
  readonly rounds: number;
  readonly shots: number;
  /** First and last day of a round; null without one. */
  readonly firstOn: string | null;
  readonly lastOn: string | null;
  /** Reviews that the golfer marked done. */
  readonly done: readonly string[];
  readonly report: MergeReport;
}

/** Splits a file into the books of the golfers in it. A broken one among them is named, the others stand. */
export function memberTexts(text: string): TeamTexts {
  const reading = readAnyFile(text);
  if (reading.kind === 'refused') return reading;
  const any = reading.value;
  if (any.kind === 'review') return { kind: 'review', playerId: any.file.playerId };
  const files = any.kind === 'team' ? any.file.members.map(({ file }) => file) : [any.file];
  const members = files.map((file) => ({
    playerId: file.player.id,
    name: file.player.name,
    text: writeCarrybookFile(file),
  }));
  return { kind: 'members', members, broken: any.kind === 'team' ? any.file.broken : [] };
}

/** The later of two instants. */
function laterOf(a: string, b: string): string {
  const order = Date.parse(a) - Date.parse(b);
  return order > 0 || (order === 0 && a > b) ? a : b;
}

/** What the first file of a golfer brings: all that is kept of it is new. */
function firstReport(file: CarrybookFile, kept: Logbook): MergeReport {
  const counts = (kind: keyof MergeReport) => ({
    new: kept[kind].length,
    changed: 0,
    same: file[kind].length - kept[kind].length,
    removed: 0,
  });
  return { clubs: counts('clubs'), rounds: counts('rounds'), shots: counts('shots'), reviews: counts('reviews') };
}

/**
 * A golfer's book as stored, merged with one that came in, less the seasons that the coach purged. Any
 * order of files, and each as often as you like, ends in the same text; its moment is the latest at which
 * one of them was written.
 *
 * @param incoming text of {@link memberTexts}. @param stored text kept before; null: none.
 * @throws RangeError when the two belong to two golfers.
 */
export function takeInMember(incoming: string, stored: string | null, purged: readonly SeasonSpan[]): TakenMember {
  // Both were written by this app from what it had read and checked.
  const theirs = JSON.parse(incoming) as CarrybookFile;
  const ours = stored === null ? null : (JSON.parse(stored) as CarrybookFile);
  if (ours && ours.player.id !== theirs.player.id) throw new RangeError(`${theirs.player.id} is not ${ours.player.id}`);
  const incomingBook = withoutSeasons(settledLogbook(logbookOf(theirs)), purged);
  if (!ours) return keptMember(incomingBook, theirs.exportedAt, firstReport(theirs, incomingBook));
  const { merged, report } = mergeReport(logbookOf(ours), incomingBook);
  return keptMember(withoutSeasons(merged, purged), laterOf(ours.exportedAt, theirs.exportedAt), report);
}

/** The stored form of a golfer's book and what a list of golfers says of it. */
export function keptMember(logbook: Logbook, asOf: string, report: MergeReport): TakenMember {
  const days = logbook.rounds.map((round) => round.date).sort();
  return {
    text: writeCarrybookFile(carrybookFileOf(logbook, asOf, 'share')),
    name: logbook.player.name,
    asOf,
    rounds: logbook.rounds.length,
    shots: logbook.shots.length,
    firstOn: days[0] ?? null,
    lastOn: days.at(-1) ?? null,
    done: logbook.done.map(({ reviewId }) => reviewId),
    report,
  };
}
