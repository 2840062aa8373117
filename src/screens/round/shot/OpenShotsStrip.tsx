import type { Keeper } from '../../../actions/keeper.ts';
import { withUnsaved } from '../../../actions/withUnsaved.ts';
import { openShots } from '../../../golf/openShots.ts';
import type { Shot } from '../../../golf/shot.ts';
import { playingNumbers, shotsOfHole } from '../../../golf/shotOrder.ts';
import { liveClubs } from '../../../logbook/live.ts';
import { shotWords } from '../../words/shot.ts';
import { figure } from '../../words.ts';
import { nameOfClub } from './clubsOfBag.ts';
import { isMeant } from './Key.tsx';
import css from './OpenShotsStrip.module.css';

interface Props {
  readonly keeper: Keeper;
  /** Shots of the whole round, as stored. */
  readonly shots: readonly Shot[];
  readonly onOpen: (shot: Shot) => void;
}

/** The shots of the round that still wait for a club, a lie or a distance; tapped, one is opened again. */
export function OpenShotsStrip({ keeper, shots: stored, onOpen }: Props) {
  const roundId = stored[0]?.roundId ?? '';
  const shots = withUnsaved(keeper.unsaved.value, roundId, stored);
  const live = liveClubs(keeper.connection).value;
  const clubs = live.kind === 'ready' ? live.value : [];
  const open = openShots(shots);
  if (open.length === 0) return null;
  const { strip } = shotWords;
  return (
    <section class={css.strip} aria-label={strip.title(open.length)}>
      <p>{strip.title(open.length)}</p>
      <ul>
        {open.map(({ shot, missing }) => {
          const number = playingNumbers(shotsOfHole(shots, shot.hole)).get(shot.id);
          const club = nameOfClub(clubs, shot.clubId, shot.at ?? '9999-12-31') ?? shotWords.line.clubOpen;
          const wants = missing.filter((slot) => slot !== 'club' || shot.clubId !== null);
          return (
            <li key={shot.id}>
              <button type="button" onClick={(event) => isMeant(event) && onOpen(shot)}>
                <b>{strip.hole(figure(shot.hole), number ? figure(number) : shotWords.line.provisional)}</b>
                <span>
                  {wants.length === 0 ? club : strip.wants(club, wants.map((slot) => strip.missing[slot]).join(', '))}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
