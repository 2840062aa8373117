import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Keeper } from '../../../actions/keeper.ts';
import type { FirmedUp } from '../../../book/firmedUp.ts';
import { specOn } from '../../../golf/club.ts';
import { liveLogbook } from '../../../logbook/live.ts';
import { compute } from '../../../worker/compute.ts';
import { clubName, swingName } from '../../clubName.ts';
import { type DistanceUnit, inUnit } from '../../distance.ts';
import { practiceWords } from '../../words/practice.ts';
import { words as allWords, figure } from '../../words.ts';
import css from './EveningLine.module.css';

const { evening: words } = practiceWords;

interface Props {
  readonly keeper: Keeper;
  /** `YYYY-MM-DD`. */
  readonly day: string;
  readonly unit: DistanceUnit;
}

type Firmed =
  | { readonly kind: 'reckoning' }
  | { readonly kind: 'ready'; readonly firmed: readonly FirmedUp[] }
  | { readonly kind: 'failed' };

/** What the day firmed up: a line that says how many numbers, and one for each of them. For the evening, when play is over. */
export function EveningLine({ keeper, day, unit }: Props) {
  const live = liveLogbook(keeper.connection).value;
  const firmed = useSignal<Firmed>({ kind: 'reckoning' });
  const logbook = live.kind === 'ready' ? live.value : null;
  useEffect(() => {
    if (!logbook) return undefined;
    let isNewest = true;
    const asOf = new Date(keeper.clock.now()).toISOString();
    compute('firmedOn', logbook, day, asOf).then(
      (found) => {
        if (isNewest) firmed.value = { kind: 'ready', firmed: found };
      },
      (error) => {
        console.error('what firmed up cannot be reckoned', error);
        if (isNewest) firmed.value = { kind: 'failed' };
      },
    );
    return () => {
      isNewest = false;
    };
  }, [logbook, day, keeper, firmed]);
  const { value: state } = firmed;
  const half = (length: FirmedUp['now_m']) =>
    `${figure(Math.round(inUnit(length, unit) * 10) / 10)}\u00a0${allWords.units[unit].short}`;
  const lineOf = ({ clubId, swing, before_m, now_m, balls }: FirmedUp) => {
    const club = logbook?.clubs.find(({ id }) => id === clubId);
    const name = club ? clubName(club, specOn(club, day)) : '';
    const what = swing === 'full' ? practiceWords.rungFull(name) : practiceWords.rung(name, swingName(swing));
    return words.line(what, half(before_m), half(now_m), balls);
  };
  return (
    <section class={css.evening} aria-labelledby="evening" aria-live="polite">
      <h2 id="evening">{words.title}</h2>
      {state.kind === 'reckoning' && <p>{words.reckoning}</p>}
      {state.kind === 'failed' && <p>{words.failed}</p>}
      {state.kind === 'ready' && (
        <>
          <p class={css.line}>{state.firmed.length > 0 ? words.firmed(state.firmed.length) : words.none}</p>
          <ul>
            {state.firmed.map((each) => (
              <li key={`${each.clubId} ${each.specId} ${each.swing}`}>{lineOf(each)}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
