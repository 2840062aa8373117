import { PageHead } from '../parts/PageHead.tsx';
import type { Route } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { teamWords } from '../words/team.ts';
import { words as allWords } from '../words.ts';
import { CarePage } from './CarePage.tsx';
import { GroupsPage } from './GroupsPage.tsx';
import { isByTheRules } from './isByTheRules.ts';
import { PaperPage } from './PaperPage.tsx';
import { PlayerPage } from './PlayerPage.tsx';
import { ReviewsPage } from './ReviewsPage.tsx';
import { SharePage } from './SharePage.tsx';
import { SheetPage } from './SheetPage.tsx';
import { TablePage } from './TablePage.tsx';
import css from './Team.module.css';
import { TwoBagsPage } from './TwoBagsPage.tsx';
import { useTeam } from './useTeam.ts';

/** The coach's side of the place: the books of others. */
function Coach({ path: [page, id] }: { readonly path: Route }) {
  const team = useTeam();
  if (team.kind !== 'ready') {
    return (
      <>
        <PageHead title={teamWords.title} />
        <p class={css.group} role="status">
          {team.kind === 'failed' ? teamWords.trouble(allWords.storage.why(team.why)) : teamWords.opening}
        </p>
      </>
    );
  }
  if (page === 'player' && id !== undefined) return <PlayerPage key={id} team={team.value} playerId={id} />;
  if (page === 'paper' && id !== undefined) return <PaperPage key={id} team={team.value} playerId={id} />;
  if (page === 'two') return <TwoBagsPage team={team.value} />;
  if (page === 'groups') return <GroupsPage team={team.value} />;
  if (page === 'sheet') return <SheetPage team={team.value} />;
  if (page === 'care') return <CarePage team={team.value} />;
  return <TablePage team={team.value} />;
}

/** The Team place: books of others for a coach; handing one's own over and the coach's words for a golfer. */
export function Team({ path }: { readonly path: Route }) {
  const shelf = useShelf();
  if (isByTheRules(shelf)) {
    // Another book of one's own could lie here, and counts of tasks would reckon with this round's shots.
    return (
      <>
        <PageHead title={teamWords.title} />
        <p class={css.group}>{teamWords.byTheRules}</p>
      </>
    );
  }
  if (path[0] === 'share') return <SharePage />;
  if (path[0] === 'words') return <ReviewsPage />;
  return <Coach path={path} />;
}
