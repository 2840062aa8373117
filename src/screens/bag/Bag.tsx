import { useEffect } from 'preact/hooks';
import { liveClubs, liveOpenRound } from '../../logbook/live.ts';
import { lookedAt } from '../openLogbook.ts';
import { Reading } from '../round/Reading.tsx';
import { together } from '../round/together.ts';
import type { Route } from '../route.ts';
import { useKeeper } from '../useShelf.ts';
import { AnchorsPage } from './AnchorsPage.tsx';
import { BagPage } from './BagPage.tsx';
import { ClubPage } from './ClubPage.tsx';

/** The Bag place: the clubs, the page of one club, and the three carries a new golfer is asked for. */
export function Bag({ path }: { readonly path: Route }) {
  const keeper = useKeeper();
  const file = lookedAt.value;
  const [page, id] = path;
  useEffect(() => scrollTo(0, 0), [page, id]);
  if (file) return <BagPage clubs={file.logbook.clubs} today={file.asOf} isFile round={null} />;
  const today = new Date(keeper.clock.now()).toISOString();
  const live = together(liveClubs(keeper.connection).value, liveOpenRound(keeper.connection).value);
  return (
    <Reading live={live}>
      {([clubs, open]) => {
        const round = open?.round ?? null;
        if (page === 'anchors') return <AnchorsPage keeper={keeper} clubs={clubs} today={today} round={round} />;
        if (page === 'new') return <ClubPage keeper={keeper} club={null} clubs={clubs} round={round} />;
        if (page === 'club' && id) {
          const club = clubs.find((club) => club.id === id) ?? null;
          return <ClubPage key={id} keeper={keeper} club={club} clubs={clubs} round={round} isNamed />;
        }
        return <BagPage clubs={clubs} today={today} isFile={false} round={round} />;
      }}
    </Reading>
  );
}
