import { type Clause, clauses } from '../../golf/clause.ts';
import type { Round } from '../../golf/round.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { goBack } from '../route.ts';
import { refereeWords as words } from '../words/referee.ts';
import { LOCALE } from '../words.ts';
import css from './RefereeSheet.module.css';

const timeOfDay = new Intl.DateTimeFormat(LOCALE, {
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
});

/** What holds in the round that is open, so that a referee need not go looking for it. */
function now(open: Round | null): string {
  if (open?.play !== 'rules') return words.now.none;
  const { startedAt, frozenBook } = open;
  return [
    words.now.open(startedAt === null ? open.date : timeOfDay.format(new Date(startedAt))),
    ...(frozenBook ? [words.now.frozen(timeOfDay.format(new Date(frozenBook.at)), frozenBook.hash.slice(0, 8))] : []),
    words.now.clubs(open.bag.length),
    ...(open.distanceDevices ? [] : [words.now.devices]),
  ].join(' ');
}

const clauseName = (name: Clause | null): string => (name === null ? words.noClause : words.clauseName(name));

/** One page that says, place by place, what the app does in a round by the Rules and which clause it keeps to. */
export function RefereeSheet({ open }: { readonly open: Round | null }) {
  return (
    <div class={css.sheet}>
      <PageHead title={words.title} sub={words.lead} onBack={() => goBack('round')} />
      <p class={css.decides}>{words.decides}</p>
      <p>{now(open)}</p>
      <table class={css.lines}>
        <thead>
          <tr>
            <th scope="col">{words.table.where}</th>
            <th scope="col">{words.table.does}</th>
            <th scope="col">{words.table.clause}</th>
          </tr>
        </thead>
        <tbody>
          {words.lines.map(({ where, does, clause }) => (
            <tr key={where}>
              <th scope="row">{where}</th>
              <td>{does}</td>
              <td>{clauseName(clause)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <section aria-labelledby="clauses">
        <h2 id="clauses">{words.clauses}</h2>
        <dl class={css.clauses}>
          {clauses.map((name) => (
            <div key={name}>
              <dt>{words.clauseName(name)}</dt>
              <dd>{words.clause[name]}</dd>
            </div>
          ))}
        </dl>
      </section>
      <p class={css.source}>{words.source}</p>
      <p class={css.print}>
        <button type="button" class={press.press} onClick={() => print()}>
          {words.print}
        </button>
      </p>
    </div>
  );
}
