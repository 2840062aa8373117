import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf } from '../route.ts';
import { unit } from '../unit.ts';
import { useShelf } from '../useShelf.ts';
import { teamWords as words } from '../words/team.ts';
import { words as allWords } from '../words.ts';
import { isByTheRules } from './isByTheRules.ts';
import { LookControls } from './LookControls.tsx';
import { TakeIn } from './TakeIn.tsx';
import css from './Team.module.css';
import { TeamGrid } from './TeamGrid.tsx';
import { TeamList } from './TeamList.tsx';
import { fileLines } from './takingIn.ts';
import { reckoning } from './teamPages.ts';
import { seenTable, teamView } from './teamView.ts';
import type { TeamOnScreen } from './useTeam.ts';

const LINKS = ['two', 'groups', 'sheet', 'care', 'share', 'words'] as const;

/** From here on the table has room beside the names. */
const WIDE = '(min-width: 48rem)';

function useIsWide(): boolean {
  const isWide = useSignal(matchMedia(WIDE).matches);
  useEffect(() => {
    const media = matchMedia(WIDE);
    const follow = () => {
      isWide.value = media.matches;
    };
    media.addEventListener('change', follow);
    return () => media.removeEventListener('change', follow);
  }, [isWide]);
  return isWide.value;
}

/** Golfers who have a task they did not mark done, as far as is known here. */
function withOpenTasks(team: TeamOnScreen): Set<string> {
  const done = new Set(team.members.flatMap((member) => member.done));
  const open = team.reviews.filter(({ id, review }) => review.task !== null && !done.has(id));
  return new Set(open.map(({ playerId }) => playerId));
}

/** The team at a glance: books taken in, what is asked, the answer in a sentence, and the table. */
export function TablePage({ team }: { readonly team: TeamOnScreen }) {
  const isWide = useIsWide();
  const shelf = useShelf();
  const view = teamView.value;
  const group = team.groups.find(({ id }) => id === view.group);
  const inGroup = useMemo(() => (group ? new Set(group.playerIds) : null), [group]);
  const seen = useMemo(
    () => seenTable(team.table, view, inGroup, withOpenTasks(team), team.names),
    [team, view, inGroup],
  );
  const isOff = isByTheRules(shelf);
  // First while there is nobody or while files come in; after that the team itself stands first.
  const isTakingIn = team.members.length === 0 || fileLines.value.length > 0;
  const asked = team.table.columns[seen.asked];
  const { left, failed } = reckoning.value;
  const all = team.table.rows.filter((row) => inGroup === null || inGroup.has(row.member.playerId)).length;
  const shown = seen.rows.map((row) => team.names.get(row.member.playerId) ?? '');
  const answer =
    view.show === 'none' && asked
      ? words.answer.none(shown.length, all, words.column(asked.club, asked.swing), shown)
      : shown.length === 0
        ? words.answer.nobody
        : words.answer.shown(shown.length, all);
  return (
    <>
      <PageHead title={words.title} sub={words.sub(team.members.length)} />
      {isTakingIn && <TakeIn isOff={isOff} />}
      {left > 0 && (
        <p class={css.group} role="status">
          {words.reckoning(left)}
        </p>
      )}
      {Object.entries(failed).map(([playerId, why]) => (
        <p key={playerId} class={css.warn} role="alert">
          {words.notReckoned(team.names.get(playerId) ?? words.unnamed, why)}
        </p>
      ))}
      {team.members.length === 0 ? (
        <p class={css.group}>{words.empty}</p>
      ) : (
        <>
          <LookControls team={team} isWide={isWide} />
          <p class={css.answer} aria-live="polite" data-answer>
            {answer}
          </p>
          {isWide ? (
            seen.rows.length > 0 && <TeamGrid seen={seen} names={team.names} />
          ) : (
            <TeamList seen={seen} asked={asked} names={team.names} />
          )}
          <p class={css.quiet}>{words.table.key(allWords.units[unit.value].long)}</p>
        </>
      )}
      {!isTakingIn && <TakeIn isOff={isOff} />}
      <nav class={css.group} aria-label={words.links.title}>
        <div class={css.keys}>
          {LINKS.map((link) => (
            <a key={link} class={press.press} href={addressOf('team', link)}>
              {words.links[link]}
            </a>
          ))}
        </div>
      </nav>
    </>
  );
}
