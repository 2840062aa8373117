import { useSignal } from '@preact/signals';
import type { Keeper } from '../../../actions/keeper.ts';
import { swapClub } from '../../../actions/swapClub.ts';
import type { Club } from '../../../golf/club.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import press from '../../parts/Press.module.css';
import { roundWords } from '../../words/round.ts';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import { Select } from '../Select.tsx';
import { clubsOfBag, nameOfClub } from '../shot/clubsOfBag.ts';
import css from './CardPage.module.css';

const { swap: words } = roundWords;

/** The choice of the shots whose club was left open; no club has this id, for ids are never empty. */
const OPEN = '';

interface Props {
  readonly keeper: Keeper;
  readonly round: Round;
  readonly shots: readonly Shot[];
  readonly clubs: readonly Club[];
}

/** Another club in place of one noted wrongly all through the round. Undo takes all of it back at once. */
export function SwapClub({ keeper, round, shots, clubs }: Props) {
  const trouble = useSignal<string | null>(null);
  const chosenFrom = useSignal<string | null>(null);
  const chosenTo = useSignal<string | null>(null);
  const noted = [...new Set(shots.map((shot) => shot.clubId ?? OPEN))];
  const bag = clubsOfBag(clubs, round).filter((club) => club.kind !== 'putter');
  const from = noted.find((id) => id === chosenFrom.value) ?? noted[0];
  const others = bag.filter((club) => club.id !== from);
  const to = others.find((club) => club.id === chosenTo.value) ?? others[0];
  if (from === undefined || to === undefined) return null;
  const count = shots.filter((shot) => (shot.clubId ?? OPEN) === from).length;
  const name = (id: string) => (id === OPEN ? words.open : (nameOfClub(clubs, id, round.date) ?? words.unknown));
  const swap = async () => {
    trouble.value = outcomeTrouble(await swapClub(keeper, round.id, from === OPEN ? null : from, to.id));
    if (trouble.value === null) chosenFrom.value = to.id;
  };
  return (
    <details class={css.details}>
      <summary>{words.title}</summary>
      <div>
        <p role="alert" class={css.wrong}>
          {trouble.value}
        </p>
        <Select
          label={words.from}
          values={noted}
          words={Object.fromEntries(noted.map((id) => [id, name(id)]))}
          value={from}
          onChoose={(id) => {
            chosenFrom.value = id;
          }}
        />
        <Select
          label={words.to}
          values={others.map((club) => club.id)}
          words={Object.fromEntries(others.map((club) => [club.id, club.name]))}
          value={to.id}
          onChoose={(id) => {
            chosenTo.value = id;
          }}
        />
        <div class={css.keys}>
          <button type="button" class={press.press} onClick={() => void swap()}>
            {words.go(count, name(from), to.name)}
          </button>
        </div>
      </div>
    </details>
  );
}
