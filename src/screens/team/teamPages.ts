import { effect, signal } from '@preact/signals';
import { savePage } from '../../actions/savePage.ts';
import { trustedMoment } from '../../golf/trustedMoment.ts';
import { type LiveTeam, liveTeam } from '../../logbook/liveTeam.ts';
import { type StoredMember, type StoredText, teamTables } from '../../logbook/teamStore.ts';
import { compute, workerMark } from '../../worker/compute.ts';
import { teamKeeper } from './teamKeeper.ts';

/** Books still to be reckoned, and what went wrong with one, by golfer. */
export const reckoning = signal<{ readonly left: number; readonly failed: Readonly<Record<string, string>> }>({
  left: 0,
  failed: {},
});

/** The moment that a golfer's numbers are reckoned for, on this device's calendar. */
export function momentOf(member: StoredMember) {
  return trustedMoment(member.asOf, new Date(teamKeeper.clock.now()).toISOString());
}

/** The name of a page: of the same book, moment and engine the same page. */
export function pageKey(member: StoredMember): string {
  return `${member.hash} ${momentOf(member).at} ${workerMark}`;
}

/** The stored book of a golfer; null when there is none (any more). */
export async function bookText(playerId: string): Promise<StoredText | null> {
  const read = await teamKeeper.connection.withDatabase((db) => teamTables(db).texts.get(playerId), 6);
  return read.kind === 'ok' ? (read.value ?? null) : null;
}

function wanted({ members, pages }: LiveTeam): StoredMember[] {
  const there = new Set(pages.map(({ key }) => key));
  const failed = reckoning.peek().failed;
  return members.filter((member) => !there.has(pageKey(member)) && failed[member.playerId] === undefined);
}

async function reckon(member: StoredMember): Promise<void> {
  try {
    const book = await bookText(member.playerId);
    if (!book) return;
    const page = await compute('teamPage', book, momentOf(member).at);
    await savePage(teamKeeper, member.playerId, pageKey(member), page);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    reckoning.value = { ...reckoning.peek(), failed: { ...reckoning.peek().failed, [member.playerId]: why } };
  }
}

let isReckoning = false;

async function reckonAll(newest: () => LiveTeam | null): Promise<void> {
  if (isReckoning) return;
  isReckoning = true;
  const done = new Set<string>();
  for (;;) {
    const team = newest();
    const left = team ? wanted(team).filter((member) => !done.has(pageKey(member))) : [];
    reckoning.value = { ...reckoning.peek(), left: left.length };
    const [next] = left;
    if (!next) break;
    done.add(pageKey(next));
    await reckon(next);
  }
  isReckoning = false;
}

/** Keeps the team's pages in step with its books while somebody looks at the Team place. The answer ends it. */
export function followTeam(): () => void {
  const live = liveTeam(teamKeeper.connection);
  return effect(() => {
    const team = live.value;
    if (team.kind === 'ready' && wanted(team.value).length > 0) {
      void reckonAll(() => {
        const now = live.peek();
        return now.kind === 'ready' ? now.value : null;
      });
    }
  });
}
