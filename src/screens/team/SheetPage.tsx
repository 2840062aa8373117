import { useSignal } from '@preact/signals';
import { localDay } from '../../actions/clock.ts';
import { sortedRows, type TeamColumn, type TeamRow } from '../../book/teamTable.ts';
import { dayWithYear } from '../day.ts';
import { plusMinus, wholeDistance } from '../distance.ts';
import { Choice } from '../parts/Choice.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Select } from '../round/Select.tsx';
import { goBack } from '../route.ts';
import { unit } from '../unit.ts';
import { teamWords } from '../words/team.ts';
import { teamCareWords } from '../words/teamCare.ts';
import { words as allWords } from '../words.ts';
import { fileStem } from './fileStem.ts';
import { meanText } from './PlayerScoring.tsx';
import css from './SheetPage.module.css';
import { keepFile } from './sendFile.ts';
import teamCss from './Team.module.css';
import { teamCsv } from './teamCsv.ts';
import { teamKeeper } from './teamKeeper.ts';
import type { TeamOnScreen } from './useTeam.ts';

const words = teamCareWords.sheet;
const PAPERS = ['letter', 'a4'] as const;
/** Columns of numbers beside a name across the longer side of either paper at 9 pt. */
const MOST_COLUMNS = 12;

/** A number on paper: `142±3`, with the mark of what there is to note. */
function onPaper({ cells }: TeamRow, at: number): string {
  const { number, state } = cells[at];
  if (!number) return '';
  const carry = `${wholeDistance(number.stock_m, unit.value)}±${plusMinus(number.lo80_m, number.hi80_m, unit.value)}`;
  return { 'no club': '', missing: `~${carry}`, thin: `${carry}*`, stale: `${carry}†`, good: carry }[state];
}

interface TableProps {
  readonly title: string;
  readonly columns: readonly { readonly column: TeamColumn; readonly at: number }[];
  readonly rows: readonly TeamRow[];
  readonly names: ReadonlyMap<string, string>;
}

/** One table of the sheet. Columns that nobody has are left out. */
function SheetTable({ title, columns, rows, names }: TableProps) {
  const used = columns.filter(({ at }) => rows.some((row) => row.cells[at].state !== 'no club'));
  const parts = Array.from({ length: Math.ceil(used.length / MOST_COLUMNS) }, (_, i) =>
    used.slice(i * MOST_COLUMNS, (i + 1) * MOST_COLUMNS),
  );
  return (
    <>
      {parts.map((part) => (
        <SheetPart key={part[0].column.key} title={title} columns={part} rows={rows} names={names} />
      ))}
    </>
  );
}

/** As many columns as fit the width of the paper. */
function SheetPart({ title, columns: used, rows, names }: TableProps) {
  return (
    <table class={css.table}>
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">{teamWords.table.name}</th>
          {used.map(({ column }) => (
            <th key={column.key} scope="col">
              {teamWords.column(column.club, column.swing)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.member.playerId}>
            <th scope="row">{names.get(row.member.playerId)}</th>
            {used.map(({ column, at }) => (
              <td key={column.key}>{onPaper(row, at)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The team's numbers and scoring on paper, and as a table file. */
export function SheetPage({ team }: { readonly team: TeamOnScreen }) {
  const group = useSignal('');
  const paper = useSignal<(typeof PAPERS)[number]>('letter');
  const news = useSignal('');
  const chosen = team.groups.find(({ id }) => id === group.value);
  const rows = sortedRows(team.table.rows, 'name', 0).filter(
    (row) => !chosen || chosen.playerIds.includes(row.member.playerId),
  );
  const columns = team.table.columns.map((column, at) => ({ column, at }));
  const today = localDay(teamKeeper.clock.now());
  const save = async () => {
    try {
      const text = await teamCsv(team.table.columns, rows, team.names, unit.value);
      const name = `${fileStem(words.file, today, '')}.csv`;
      keepFile({ text, name, type: 'text/csv' });
    } catch (error) {
      news.value = error instanceof Error ? error.message : String(error);
    }
  };
  return (
    <div data-paper={paper.value} class={css.page}>
      <div class={css.controls}>
        <PageHead title={words.title} sub={words.sub} onBack={() => goBack('team')} />
        <div class={teamCss.group}>
          <Select
            label={words.group}
            values={['', ...team.groups.map(({ id }) => id)]}
            words={{
              '': teamWords.look.everybody,
              ...Object.fromEntries(team.groups.map(({ id, name }) => [id, name])),
            }}
            value={group.value}
            onChoose={(value) => {
              group.value = value;
            }}
          />
          <Choice
            label={words.paper}
            name="paper"
            values={PAPERS}
            words={words.papers}
            value={paper.value}
            onChoose={(value) => {
              paper.value = value;
            }}
          />
          <div class={teamCss.keys}>
            <button type="button" class={`${press.press} ${press.main}`} onClick={() => print()}>
              {words.print}
            </button>
            <button type="button" class={press.press} onClick={() => void save()}>
              {words.csv}
            </button>
            <span role="status">{news.value}</span>
          </div>
        </div>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part of the page that scrolls must be reached by keys */}
      <section class={css.sheet} tabIndex={0} aria-label={words.title}>
        <h2>{chosen?.name ?? teamWords.title}</h2>
        <p>
          {words.day(dayWithYear(today))}. {words.key(allWords.units[unit.value].long)}
        </p>
        <SheetTable
          title={words.fullSwings}
          columns={columns.filter(({ column }) => column.swing === 'full' && column.club.kind !== 'wedge')}
          rows={rows}
          names={team.names}
        />
        <SheetTable
          title={words.wedges}
          columns={columns.filter(({ column }) => column.club.kind === 'wedge')}
          rows={rows}
          names={team.names}
        />
        <table class={css.table}>
          <caption>{words.lineUp}</caption>
          <thead>
            <tr>
              <th scope="col">{teamWords.table.name}</th>
              {words.scores.map((score) => (
                <th key={score} scope="col">
                  {score}
                </th>
              ))}
              <th scope="col">{words.lastLogged}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ member: { playerId, page } }) => {
              const { scoring } = page;
              const means = scoring
                ? [scoring.par3, scoring.par4, scoring.par5, scoring.toParANine, scoring.puttsAHole]
                : words.scores.map(() => null);
              return (
                <tr key={playerId}>
                  <th scope="row">{team.names.get(playerId)}</th>
                  {means.map((mean, i) => (
                    <td key={words.scores[i]}>{mean ? meanText(mean) : ''}</td>
                  ))}
                  <td>{page.lastOn === null ? '' : dayWithYear(page.lastOn)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
    </div>
  );
}
