import press from '../../parts/Press.module.css';
import { addressOf } from '../../route.ts';
import { noPhoneWords as words } from '../../words/noPhone.ts';
import css from './StartRound.module.css';

interface Props {
  readonly isStarting: boolean;
  /** Opens the round to enter afterwards what was noted on paper. */
  readonly onEnter: () => void;
}

/** Where no phones are allowed: the card and the sheet for the pocket before the round, and its entry after it. */
export function NoPhone({ isStarting, onEnter }: Props) {
  return (
    <section class={css.group} aria-labelledby="no-phone">
      <h2 id="no-phone">{words.title}</h2>
      <p class={css.quiet}>{words.before}</p>
      <div class={css.keys}>
        <a class={press.press} href={addressOf('yardages', 'card')}>
          {words.card}
        </a>
        <a class={press.press} href={addressOf('yardages', 'card', 'shots')}>
          {words.sheet}
        </a>
      </div>
      <p class={css.quiet}>{words.after}</p>
      <button type="button" class={press.press} disabled={isStarting} onClick={onEnter}>
        {isStarting ? words.entering : words.enter}
      </button>
    </section>
  );
}
