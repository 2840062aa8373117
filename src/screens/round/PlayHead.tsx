import { useEffect } from 'preact/hooks';
import type { Keeper } from '../../actions/keeper.ts';
import type { Round } from '../../golf/round.ts';
import { holeAfter, holeBefore } from '../../golf/roundOrder.ts';
import type { Shot } from '../../golf/shot.ts';
import { distanceWithUnit } from '../distance.ts';
import { addressOf } from '../route.ts';
import { roundWords } from '../words/round.ts';
import { words as allWords } from '../words.ts';
import css from './PlayPage.module.css';
import type { ShownUnits } from './shownUnits.ts';
import { weatherWords } from './weatherWords.ts';

const { head: words } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly round: Round;
  /** Shots of the round, with what is not saved yet. */
  readonly shots: readonly Shot[];
  readonly hole: number;
  readonly units: ShownUnits;
  readonly onHole: (hole: number) => void;
}

/** The head of the page that a hole is logged on: the hole, the day, what is saved, and the holes beside it. */
export function PlayHead({ keeper, round, shots, hole, units, onHole }: Props) {
  const isPractice = round.play === 'practice ground';
  const { par = null, length_m = null } = round.holes.find((each) => each.number === hole) ?? {};
  const facts = isPractice
    ? []
    : [
        ...(par === null ? [] : [words.par(par)]),
        ...(length_m === null ? [] : [distanceWithUnit(length_m, units.distance)]),
      ];
  const name = isPractice ? words.practice : words.hole(hole);
  const before = holeBefore(round, hole);
  const after = holeAfter(round, hole);
  const waiting = keeper.unsaved.value.length;
  const weather = weatherWords(round.conditions, units);
  useEffect(() => {
    document.title = `${name} · ${allWords.app}`;
  }, [name]);
  const turn = (to: number | null, sign: string, label: (hole: number) => string) => (
    <button
      type="button"
      class={css.turn}
      disabled={to === null}
      aria-label={to === null ? undefined : label(to)}
      onClick={() => to !== null && onHole(to)}
    >
      <span aria-hidden="true">{sign}</span>
    </button>
  );
  return (
    <header class={css.head}>
      {turn(before, '‹', words.previous)}
      <a class={css.middle} href={addressOf('round', 'hole', round.id, String(hole))} aria-describedby="play-sub">
        <h1>
          <u>{name}</u>
          {facts.map((fact) => (
            <span key={fact}> · {fact}</span>
          ))}
        </h1>
        <p id="play-sub" class={css.sub}>
          <span role="status" data-saved={waiting === 0} class={waiting > 0 ? css.unsaved : undefined}>
            {waiting > 0 ? roundWords.unsaved(waiting) : roundWords.saved(shots.length)}
          </span>
          {weather && ` · ${weather}`}
        </p>
      </a>
      {turn(after, '›', words.next)}
    </header>
  );
}
