import type { BagGate } from '../../../golf/bagGate.ts';
import type { Club } from '../../../golf/club.ts';
import press from '../../parts/Press.module.css';
import { addressOf } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { clubsOfBag } from '../shot/clubsOfBag.ts';
import css from './StartRound.module.css';

const { start: words } = roundWords;

/** Day late enough for the present build of every club. */
const LATEST = '9999-12-31';

interface Props {
  /** The clubs in the bag. */
  readonly clubs: readonly Club[];
  readonly gate: BagGate;
  readonly isByTheRules: boolean;
}

/** What is in the bag, and whether a round by the Rules may be started with it. */
export function BagLine({ clubs, gate, isByTheRules }: Props) {
  const isTooMany = isByTheRules && gate.kind === 'too many';
  const names = clubsOfBag(clubs, { bag: [], date: LATEST })
    .map((club) => club.name)
    .join(', ');
  return (
    <section class={css.group} aria-labelledby="bag-line">
      <h2 id="bag-line">{words.bag}</h2>
      {clubs.length === 0 ? (
        <p>{words.bagEmpty}</p>
      ) : (
        <p class={isTooMany ? css.wrong : undefined}>
          {isTooMany && gate.kind === 'too many' ? words.bagFull(gate.clubs, gate.over) : words.bagHolds(gate.clubs)}
        </p>
      )}
      {names && <p class={css.quiet}>{names}</p>}
      {(clubs.length === 0 || isTooMany) && (
        <a class={press.press} href={addressOf('bag')}>
          {words.toBag}
        </a>
      )}
    </section>
  );
}
