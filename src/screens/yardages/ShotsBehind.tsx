import { useSignal } from '@preact/signals';
import type { Book, BookCell } from '../../book/book.ts';
import type { Logbook } from '../../golf/logbook.ts';
import type { Shot } from '../../golf/shot.ts';
import press from '../parts/Press.module.css';
import { unit } from '../unit.ts';
import { words } from '../words.ts';
import css from './NumberPage.module.css';
import { shotSentence } from './shotSentence.ts';

/** How many shots stand on the page before the rest is asked for. */
const FIRST_SHOTS = 20;

interface Props {
  readonly logbook: Logbook;
  readonly book: Book;
  readonly cell: BookCell;
  /** The shots behind the number, newest first. */
  readonly shots: readonly Shot[];
}

/** The shots behind a number as sentences, newest first, then those of the same club and swing left out, and why. */
export function ShotsBehind({ logbook, book, cell, shots }: Props) {
  const isWhole = useSignal(false);
  const rounds = new Map(logbook.rounds.map((round) => [round.id, round]));
  const sentence = (shot: Shot) => shotSentence(shot, rounds.get(shot.roundId), unit.value, book.asOf);
  const byId = new Map(logbook.shots.map((shot) => [shot.id, shot]));
  const leftOut = book.leftOut.flatMap(({ shotId, why }) => {
    const shot = byId.get(shotId);
    const isHere = shot?.clubId === cell.clubId && shot.swing === cell.swing;
    return shot && isHere && (shot.specId === null || shot.specId === cell.specId) ? [{ shot, why }] : [];
  });
  const shown = isWhole.value ? shots : shots.slice(0, FIRST_SHOTS);
  return (
    <section aria-labelledby="shots-behind">
      <h2 id="shots-behind">{words.number.shotsTitle}</h2>
      <p class={css.quiet}>
        {shots.length === 0 ? words.number.noShots : words.number.solidOf(cell.solid, cell.shots)}
      </p>
      <ol class={css.shots}>
        {shown.map((shot) => (
          <li key={shot.id}>{sentence(shot)}</li>
        ))}
      </ol>
      {shown.length < shots.length && (
        <button
          type="button"
          class={press.press}
          onClick={() => {
            isWhole.value = true;
          }}
        >
          {words.number.showAll(shots.length)}
        </button>
      )}
      {leftOut.length > 0 && (
        <>
          <h3>{words.number.leftOutTitle}</h3>
          <ol class={css.shots}>
            {leftOut.map(({ shot, why }) => (
              <li key={shot.id}>
                {sentence(shot)}: {why}
              </li>
            ))}
          </ol>
        </>
      )}
    </section>
  );
}
