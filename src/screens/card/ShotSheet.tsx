import { useSignal } from '@preact/signals';
import { holeNumbers } from '../../golf/roundOrder.ts';
import { Choice } from '../parts/Choice.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { addressOf, goBack } from '../route.ts';
import { cardWords } from '../words/card.ts';
import css from './ShotSheet.module.css';

const { sheet: words } = cardWords;

/** Lines a hole has: shots before the green; putts and score have their own place. Own choice: bogey golf on a par 5. */
const LINES = 4;
const HOLES_A_PAGE = 9;

/** One hole of the sheet: its number, par, putts and score at the side, and a line for each stroke. */
function HoleLines({ hole }: { readonly hole: number }) {
  return (
    <tbody class={css.hole}>
      {Array.from({ length: LINES }, (_, line) => (
        <tr key={line}>
          {line === 0 && (
            <th class={css.side} scope="rowgroup" rowSpan={LINES}>
              <span class={css.number}>{hole}</span>
              <span>{words.par}</span>
              <span>{words.putts}</span>
              <span>{words.score}</span>
            </th>
          )}
          {words.columns.map((column) => (
            <td key={column} />
          ))}
        </tr>
      ))}
    </tbody>
  );
}

/** A blank sheet for nine or eighteen holes, in the order in which shots are entered afterwards; nine holes a page. */
export function ShotSheet() {
  const count = useSignal<'9' | '18'>('18');
  const first = useSignal('1');
  const start = Number(first.value);
  const isHole = Number.isInteger(start) && start >= 1 && start <= 18;
  const holes = holeNumbers(count.value === '9' ? 9 : 18, isHole ? start : 1);
  const pages = Array.from({ length: Math.ceil(holes.length / HOLES_A_PAGE) }, (_, page) =>
    holes.slice(page * HOLES_A_PAGE, (page + 1) * HOLES_A_PAGE),
  );
  return (
    <>
      <div class={css.controls}>
        <PageHead title={words.title} sub={words.sub} onBack={() => goBack('yardages', 'card')} />
        <Choice
          label={words.holes}
          name="sheet-holes"
          values={['9', '18']}
          words={words.holeChoices}
          value={count.value}
          onChoose={(value) => {
            count.value = value;
          }}
        />
        <Field
          label={words.first}
          value={first.value}
          keys="numeric"
          maxLength={2}
          error={isHole ? undefined : words.firstWrong}
          onInput={(value) => {
            first.value = value;
          }}
        />
        <p class={css.keys}>
          <button type="button" class={`${press.press} ${press.main}`} onClick={() => print()}>
            {cardWords.print}
          </button>
          <a class={press.press} href={addressOf('yardages', 'card')}>
            {cardWords.toCard}
          </a>
        </p>
      </div>
      {pages.map((page) => (
        <section
          key={page[0]}
          class={css.page}
          aria-label={words.pageLabel(page[0], page[page.length - 1])}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide sheet scrolls, and the keyboard must reach it
          tabIndex={0}
        >
          <p class={css.about}>
            {[words.date, words.course, words.tees, words.weather].map((what) => (
              <span key={what}>{what}</span>
            ))}
          </p>
          <table class={css.lines}>
            <thead>
              <tr>
                <th scope="col">{words.hole}</th>
                {words.columns.map((column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            {page.map((hole) => (
              <HoleLines key={hole} hole={hole} />
            ))}
          </table>
          <p class={css.key}>{words.key}</p>
        </section>
      ))}
    </>
  );
}
