import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { NEAR, type NumberOption, numberSearch, type SearchBook } from '../../book/numberSearch.ts';
import { specOn } from '../../golf/club.ts';
import { compute } from '../../worker/compute.ts';
import { clubName, swingName } from '../clubName.ts';
import { distanceWithUnit, plusMinus, wholeDistance } from '../distance.ts';
import { lengthIn } from '../lengthIn.ts';
import { openBook } from '../openBook.ts';
import { PageHead } from '../parts/PageHead.tsx';
import { Field } from '../round/Field.tsx';
import { goBack } from '../route.ts';
import { unit } from '../unit.ts';
import { searchWords as words } from '../words/search.ts';
import { words as allWords } from '../words.ts';
import css from './NumberSearch.module.css';
import { numberAddress } from './numberAddress.ts';

/** Longest carry that may be asked for, in the unit on screen. */
const MOST = 400;

/** A whole figure within reach; `wrong` when something else stands there, null when nothing does. */
function read(typed: string): number | 'wrong' | null {
  if (typed.trim() === '') return null;
  const figure = Number(typed);
  return Number.isInteger(figure) && figure >= 1 && figure <= MOST ? figure : 'wrong';
}

type Searched =
  | { readonly kind: 'reckoning' }
  | { readonly kind: 'ready'; readonly book: SearchBook }
  | { readonly kind: 'failed'; readonly why: string };

/** What the numbers on screen are searched in; reckoned once for each book that is open. */
function useSearchBook(): Searched {
  const searched = useSignal<Searched>({ kind: 'reckoning' });
  const state = openBook.value;
  const of = state.kind === 'ready' && state.of.frozen === null ? state.of : null;
  useEffect(() => {
    if (!of) return undefined;
    let isNewest = true;
    compute('searchBook', of.logbook, of.asOf).then(
      (book) => {
        if (isNewest) searched.value = { kind: 'ready', book };
      },
      (error: Error) => {
        if (isNewest) searched.value = { kind: 'failed', why: error.message };
      },
    );
    return () => {
      isNewest = false;
    };
  }, [of, searched]);
  return searched.value;
}

/** A carry is typed, and the clubs and swings that reach it best are listed, ties as ties. Not while a round by the Rules is open. */
export function NumberSearch() {
  const wanted = useSignal('');
  const hazard = useSignal('');
  const searched = useSearchBook();
  const state = openBook.value;
  const { short, long } = allWords.units[unit.value];
  const [figure, over] = [read(wanted.value), read(hazard.value)];
  const head = <PageHead title={words.title} sub={words.sub(long)} onBack={() => goBack('yardages')} />;
  if (state.kind === 'ready' && state.of.frozen !== null) {
    return (
      <>
        {head}
        <p class={css.says}>{words.notNow}</p>
      </>
    );
  }
  const isAsked = typeof figure === 'number' && over !== 'wrong';
  const options =
    searched.kind === 'ready' && isAsked
      ? numberSearch(searched.book, lengthIn(figure, unit.value), over === null ? null : lengthIn(over, unit.value))
      : null;
  return (
    <>
      {head}
      <div class={css.fields}>
        <Field
          label={words.wanted(short)}
          value={wanted.value}
          keys="numeric"
          maxLength={3}
          error={figure === 'wrong' ? words.wrong(MOST) : undefined}
          onInput={(value) => {
            wanted.value = value;
          }}
        />
        <Field
          label={words.hazard(short)}
          value={hazard.value}
          keys="numeric"
          maxLength={3}
          note={words.hazardNote}
          error={over === 'wrong' ? words.wrong(MOST) : undefined}
          onInput={(value) => {
            hazard.value = value;
          }}
        />
      </div>
      <section aria-labelledby="reaches" aria-live="polite">
        <h2 id="reaches" class={css.title}>
          {words.results}
        </h2>
        {searched.kind === 'reckoning' && <p class={css.says}>{words.reckoning}</p>}
        {searched.kind === 'failed' && <p class={css.says}>{words.failed(searched.why)}</p>}
        {options?.length === 0 && <p class={css.says}>{words.none}</p>}
        {options && state.kind === 'ready' && (
          <ol class={css.options}>
            {options.map((option) => (
              <Option key={`${option.clubId} ${option.swing}`} option={option} />
            ))}
          </ol>
        )}
      </section>
      <p class={css.says}>{words.howTo(distanceWithUnit(NEAR, unit.value))}</p>
    </>
  );
}

/** One way to carry the number: what to swing, the chances, and what stands behind them. */
function Option({ option }: { readonly option: NumberOption }) {
  const state = openBook.value;
  if (state.kind !== 'ready') return null;
  const { logbook, asOf } = state.of;
  const club = logbook.clubs.find(({ id }) => id === option.clubId);
  const cell = state.book.cells.find(
    ({ clubId, specId, swing }) => clubId === option.clubId && specId === option.specId && swing === option.swing,
  );
  if (!club || !cell) return null;
  const name = words.label(clubName(club, specOn(club, asOf)), swingName(option.swing));
  const stock = wholeDistance(option.stock_m, unit.value);
  return (
    <li data-tie={option.isTie ? '' : undefined}>
      {option.isTie && <p class={css.tie}>{words.tie}</p>}
      <a class={css.option} href={numberAddress(club, cell, asOf)}>
        <span class={css.what}>{name}</span>
        <span class={css.number} data-metres={option.stock_m}>
          {option.shots === 0 ? `~${stock}` : stock}{' '}
          <small>± {plusMinus(option.lo80_m, option.hi80_m, unit.value)}</small>
        </span>
        <span class={css.chances}>
          <b>{words.near(option.near, distanceWithUnit(NEAR, unit.value))}</b>
          {option.over !== null && <b> · {words.over(option.over)}</b>} · {words.shots(option.shots)}
        </span>
      </a>
    </li>
  );
}
