import { useEffect, useMemo } from 'preact/hooks';
import { type TeamTable, teamTable } from '../../book/teamTable.ts';
import type { Live } from '../../logbook/liveSignal.ts';
import { type LiveTeam, liveTeam } from '../../logbook/liveTeam.ts';
import { shownNames } from './shownNames.ts';
import { teamKeeper } from './teamKeeper.ts';
import { followTeam, pageKey } from './teamPages.ts';

/** The team as screens show it. */
export interface TeamOnScreen extends LiveTeam {
  readonly names: ReadonlyMap<string, string>;
  readonly table: TeamTable;
}

/** The team, kept up to date while the component stands; books not reckoned yet are not in the table. */
export function useTeam(): Live<TeamOnScreen> {
  useEffect(followTeam, []);
  const live = liveTeam(teamKeeper.connection).value;
  return useMemo(() => {
    if (live.kind !== 'ready') return live;
    const { members, pages, looks } = live.value;
    const names = shownNames(members);
    const byKey = new Map(pages.map((page) => [page.key, page.page]));
    const looked = new Map(looks.map((look) => [look.playerId, look]));
    const rows = members.flatMap((member) => {
      const page = byKey.get(pageKey(member)) ?? pages.find(({ playerId }) => playerId === member.playerId)?.page;
      const { playerId } = member;
      return page ? [{ playerId, name: names.get(playerId) ?? '', page, looked: looked.get(playerId) ?? null }] : [];
    });
    const now = new Date(teamKeeper.clock.now()).toISOString();
    const byName = members.toSorted((a, b) => ((names.get(a.playerId) ?? '') < (names.get(b.playerId) ?? '') ? -1 : 1));
    return { kind: 'ready', value: { ...live.value, members: byName, names, table: teamTable(rows, now) } };
  }, [live]);
}
