import { useSignal } from '@preact/signals';
import { removeView, saveView } from '../../actions/teamViews.ts';
import { Choice } from '../parts/Choice.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { Select } from '../round/Select.tsx';
import { teamWords } from '../words/team.ts';
import { words as allWords } from '../words.ts';
import css from './Team.module.css';
import { teamKeeper } from './teamKeeper.ts';
import { columnSets, orders, readView, showings, type TeamView, teamView } from './teamView.ts';
import type { TeamOnScreen } from './useTeam.ts';

const words = teamWords.look;

/** What of the table is looked at, and views kept under a name. */
export function LookControls({ team, isWide }: { readonly team: TeamOnScreen; readonly isWide: boolean }) {
  const view = teamView.value;
  const name = useSignal('');
  const news = useSignal('');
  const change = (changes: Partial<TeamView>) => {
    teamView.value = { ...view, ...changes };
  };
  const columns = team.table.columns;
  const columnWords = Object.fromEntries(columns.map(({ key, club, swing }) => [key, teamWords.column(club, swing)]));
  const groupWords = { '': words.everybody, ...Object.fromEntries(team.groups.map((group) => [group.id, group.name])) };
  const keep = async (event: Event) => {
    event.preventDefault();
    const kept = await saveView(teamKeeper, name.value, { ...view });
    if (kept.kind === 'saved') name.value = '';
    news.value =
      kept.kind === 'saved' ? words.kept : kept.kind === 'refused' ? words.noName : allWords.storage.why(kept.why);
  };
  return (
    <section class={css.group} aria-labelledby="look">
      <h2 id="look">{words.title}</h2>
      <div class={css.fields}>
        {columns.length > 0 && (
          <Select
            label={words.column}
            values={columns.map(({ key }) => key)}
            words={columnWords}
            value={columns.some(({ key }) => key === view.column) ? view.column : (columns[0]?.key ?? '')}
            onChoose={(column) => change({ column })}
          />
        )}
        <Select
          label={words.show}
          values={showings}
          words={words.shows}
          value={view.show}
          onChoose={(show) => change({ show })}
        />
      </div>
      <details class={css.details} open={view.search !== '' || view.group !== ''}>
        <summary>
          {words.search}, {words.group}, {words.order}, {words.views}
        </summary>
        <div class={css.fields}>
          <Field label={words.search} value={view.search} maxLength={60} onInput={(search) => change({ search })} />
          <Select
            label={words.group}
            values={['', ...team.groups.map(({ id }) => id)]}
            words={groupWords}
            value={view.group}
            onChoose={(group) => change({ group })}
          />
          <Select
            label={words.order}
            values={orders}
            words={words.orders}
            value={view.order}
            onChoose={(order) => change({ order })}
          />
        </div>
        <form class={css.group} onSubmit={(event) => void keep(event)}>
          <Field
            label={words.viewName}
            value={name.value}
            maxLength={60}
            onInput={(value) => {
              name.value = value;
            }}
          />
          <div class={css.keys}>
            <button type="submit" class={press.press}>
              {words.keep}
            </button>
            <span role="status">{news.value}</span>
          </div>
        </form>
        {team.views.length > 0 && (
          <ul class={css.rows} aria-label={words.views}>
            {team.views.map(({ id, name: called, view: kept }) => (
              <li key={id}>
                <button
                  type="button"
                  class={press.press}
                  onClick={() => {
                    teamView.value = readView(kept);
                  }}
                >
                  {called}
                </button>
                <button type="button" class={press.press} onClick={() => void removeView(teamKeeper, id)}>
                  {words.remove(called)}
                </button>
              </li>
            ))}
          </ul>
        )}
      </details>
      {isWide && (
        <Choice
          label={words.columns}
          name="columns"
          values={columnSets}
          words={words.columnSets}
          value={view.columns}
          onChoose={(columns) => change({ columns })}
        />
      )}
    </section>
  );
}
