import type { Logbook } from '../golf/logbook.ts';
import { canonicalJson } from './canonicalJson.ts';
import { mergeLogbooks } from './merge.ts';

/** What an import does to the records of one kind. */
export interface MergeCounts {
  /** Records that were not here before. */
  readonly new: number;
  /** Records that were here and are now different. */
  readonly changed: number;
  /** Records of the import that leave what was here as it was. */
  readonly same: number;
  /** Records that were here and go, since they were deleted elsewhere. */
  readonly removed: number;
}

/** What an import does to a logbook, kind by kind. */
export interface MergeReport {
  readonly clubs: MergeCounts;
  readonly rounds: MergeCounts;
  readonly shots: MergeCounts;
  readonly reviews: MergeCounts;
}

type Kind = keyof MergeReport;

function counts(ours: Logbook, theirs: Logbook, merged: Logbook, kind: Kind): MergeCounts {
  const before = new Map<string, unknown>(ours[kind].map((record) => [record.id, record]));
  const after = new Map<string, unknown>(merged[kind].map((record) => [record.id, record]));
  const sum = { new: 0, changed: 0, same: 0, removed: 0 };
  for (const { id } of theirs[kind]) {
    const was = before.get(id);
    const is = after.get(id);
    if (was === undefined) sum[is === undefined ? 'same' : 'new'] += 1;
    else if (is !== undefined) sum[canonicalJson(was) === canonicalJson(is) ? 'same' : 'changed'] += 1;
  }
  for (const id of before.keys()) if (!after.has(id)) sum.removed += 1;
  return sum;
}

/** The merge of `theirs` into `ours`, and what it does to `ours`: shown to the golfer before and after an import. */
export function mergeReport(
  ours: Logbook,
  theirs: Logbook,
): { readonly merged: Logbook; readonly report: MergeReport } {
  const settled = mergeLogbooks(ours, ours);
  const merged = mergeLogbooks(ours, theirs);
  return {
    merged,
    report: {
      clubs: counts(settled, theirs, merged, 'clubs'),
      rounds: counts(settled, theirs, merged, 'rounds'),
      shots: counts(settled, theirs, merged, 'shots'),
      reviews: counts(settled, theirs, merged, 'reviews'),
    },
  };
}
