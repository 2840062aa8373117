import { useMemo } from 'preact/hooks';
import type { Keeper } from '../../actions/keeper.ts';
import type { Club } from '../../golf/club.ts';
import { liveRound, type RoundWithShots } from '../../logbook/live.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf, type Route } from '../route.ts';
import { roundWords } from '../words/round.ts';
import { CardPage } from './card/CardPage.tsx';
import { MovePage } from './edit/MovePage.tsx';
import { ShotEditPage } from './edit/ShotEditPage.tsx';
import { HolePage } from './hole/HolePage.tsx';
import { PlayPage } from './PlayPage.tsx';
import { Reading } from './Reading.tsx';
import type { ShownUnits } from './shownUnits.ts';

interface Props {
  readonly keeper: Keeper;
  readonly roundId: string;
  /** Which page of the round (`card`, `hole`, `log`, `shot`, `move`) and of which hole or shot. */
  readonly path: Route;
  /** Whether rounds that are over may be changed now. */
  readonly mayChangeEarlier: boolean;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
}

/** The pages of one round, being played or over: the card, a hole, a shot of it. */
export function RoundPages({ keeper, roundId, path, mayChangeEarlier, clubs, units }: Props) {
  const live = useMemo(() => liveRound(keeper.connection, roundId), [keeper, roundId]);
  return (
    <Reading live={live.value}>
      {(of) =>
        of ? (
          <Named of={of} keeper={keeper} path={path} mayChangeEarlier={mayChangeEarlier} clubs={clubs} units={units} />
        ) : (
          <NoRound />
        )
      }
    </Reading>
  );
}

function Named({
  keeper,
  of,
  path,
  mayChangeEarlier,
  clubs,
  units,
}: Omit<Props, 'roundId'> & { readonly of: RoundWithShots }) {
  const [page, part = ''] = path;
  const hole = Number(part);
  const mayChange = mayChangeEarlier || !of.round.closed;
  const isHole = of.round.holes.some((each) => each.number === hole);
  if (page === 'shot' && mayChange) return <ShotEditPage key={part} keeper={keeper} of={of} shotId={part} />;
  if (page === 'move' && mayChange) {
    return <MovePage key={part} keeper={keeper} of={of} shotId={part} clubs={clubs} units={units} />;
  }
  if (page === 'log' && isHole && mayChange) return <PlayPage keeper={keeper} of={of} hole={hole} units={units} />;
  if (page === 'hole' && isHole) {
    return <HolePage keeper={keeper} of={of} number={hole} mayChange={mayChange} clubs={clubs} units={units} />;
  }
  return <CardPage keeper={keeper} of={of} mayChange={mayChange} clubs={clubs} units={units} />;
}

function NoRound() {
  return (
    <>
      <PageHead title={roundWords.title} />
      <p role="alert">{roundWords.gone}</p>
      <a class={press.press} href={addressOf('round')}>
        {roundWords.toStart}
      </a>
    </>
  );
}
