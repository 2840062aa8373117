import { daysBetween } from '../../golf/instant.ts';
import type { Round } from '../../golf/round.ts';

/** Rounds and days after which a backup is asked for again. Own choice. */
const ROUNDS = 2;
const DAYS = 14;

/** Whether it is time for a backup, and how many rounds were closed since the last one. */
export function backupDue(
  rounds: readonly Pick<Round, 'closed' | 'closedAt'>[],
  lastBackupAt: string | null,
  now: string,
): { readonly isDue: boolean; readonly rounds: number } {
  const since = rounds.filter(
    ({ closed, closedAt }) => closed && (lastBackupAt === null || (closedAt !== null && closedAt > lastBackupAt)),
  ).length;
  if (lastBackupAt === null) return { isDue: since > 0, rounds: since };
  return { isDue: since >= ROUNDS || (since > 0 && daysBetween(lastBackupAt, now) >= DAYS), rounds: since };
}
