import type { TeamColumn } from '../../book/teamTable.ts';
import { addressOf } from '../route.ts';
import { teamWords as words } from '../words/team.ts';
import css from './TeamGrid.module.css';
import { TeamNumberCell } from './TeamNumberCell.tsx';
import type { SeenTable } from './teamView.ts';

interface Props {
  readonly seen: SeenTable;
  readonly asked: TeamColumn | undefined;
  readonly names: ReadonlyMap<string, string>;
}

/** Golfers down a narrow page with the one number asked about. */
export function TeamList({ seen, asked, names }: Props) {
  return (
    <ul class={css.list} aria-label={words.table.label}>
      {seen.rows.map(({ member, cells, missing, stale, thin, wide, overlaps, daysSilent }) => (
        <li key={member.playerId}>
          <a class={css.line} href={addressOf('team', 'player', member.playerId)}>
            <span>
              <b>{names.get(member.playerId)}</b>
              <br />
              <span class={css.small}>
                {[
                  words.table.needs(missing, stale, thin),
                  words.table.gaps(wide.length, overlaps.length),
                  words.table.silent(daysSilent),
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            </span>
            {asked && <TeamNumberCell cell={cells[seen.asked]} />}
          </a>
        </li>
      ))}
    </ul>
  );
}
