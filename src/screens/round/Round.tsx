import { liveClubs, livePlayer, liveSettings } from '../../logbook/live.ts';
import type { Route } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { BinPage } from './earlier/BinPage.tsx';
import { RoundsPage } from './earlier/RoundsPage.tsx';
import { NowPage } from './NowPage.tsx';
import { Reading } from './Reading.tsx';
import { RoundPages } from './RoundPages.tsx';
import type { ShownUnits } from './shownUnits.ts';
import { together } from './together.ts';

/** The Round place: the round being played or the start of one, and the rounds before it. */
export function Round({ path }: { readonly path: Route }) {
  const shelf = useShelf();
  const keeper = shelf.shown.value;
  const player = livePlayer(keeper.connection).value;
  const settings = liveSettings(shelf.own.connection).value;
  const clubs = liveClubs(keeper.connection).value;
  const [page, id = '', ...rest] = path;
  return (
    <Reading live={together(together(player, settings), clubs)}>
      {([[{ units: distance }, { temperature }], clubs]) => {
        const units: ShownUnits = { distance, temperature };
        if (page === undefined) return <NowPage keeper={keeper} clubs={clubs} units={units} />;
        if (page === 'rounds') return <RoundsPage keeper={keeper} />;
        if (page === 'bin') return <BinPage keeper={keeper} clubs={clubs} units={units} />;
        return <RoundPages keeper={keeper} roundId={id} path={[page, ...rest]} clubs={clubs} units={units} />;
      }}
    </Reading>
  );
}
