import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { reviewPlayers } from '../../actions/reviewPlayer.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { goBack } from '../route.ts';
import { unit } from '../unit.ts';
import { paperSheetWords as words } from '../words/paperSheet.ts';
import { teamWords } from '../words/team.ts';
import { words as allWords } from '../words.ts';
import { readSheet } from './readSheet.ts';
import css from './Team.module.css';
import { teamKeeper } from './teamKeeper.ts';
import type { TeamOnScreen } from './useTeam.ts';

/** Where a coach types a paper shot sheet in for a golfer, as a proposal. */
export function PaperPage({ team, playerId }: { readonly team: TeamOnScreen; readonly playerId: string }) {
  const id = useId();
  const [date, course, typed, news] = [useSignal(''), useSignal(''), useSignal(''), useSignal('')];
  const row = team.table.rows.find((one) => one.member.playerId === playerId);
  const back = () => goBack('team', 'player', playerId);
  if (!row) {
    return (
      <>
        <PageHead title={words.title} onBack={back} />
        <p class={css.group}>{teamWords.player.gone}</p>
      </>
    );
  }
  const lines = readSheet(typed.value, row.member.page.clubs, unit.value);
  const shots = lines.flatMap((line) => (line.kind === 'shot' ? [line.shot] : []));
  const wrong = lines.flatMap((line) => (line.kind === 'wrong' ? [line] : []));
  const write = async (event: Event) => {
    event.preventDefault();
    if (date.value === '') {
      news.value = words.noDay;
      return;
    }
    if (shots.length === 0 || wrong.length > 0) return;
    const proposal = { date: date.value, course: course.value, shots };
    const draft = { note: '', task: null, swing: null, roundId: null, proposal };
    const written = await reviewPlayers(teamKeeper, draft, [{ playerId, clubId: null }]);
    if (written.kind === 'saved') typed.value = '';
    if (written.kind === 'saved') news.value = words.written;
    else news.value = written.kind === 'unsaved' ? allWords.storage.why(written.why) : words.refused;
  };
  return (
    <>
      <PageHead title={words.title} sub={words.sub(team.names.get(playerId) ?? '')} onBack={back} />
      <form class={css.group} aria-label={words.title} onSubmit={(event) => void write(event)}>
        <div class={css.fields}>
          <Field
            label={words.day}
            type="date"
            value={date.value}
            onInput={(value) => {
              date.value = value;
            }}
          />
          <Field
            label={words.course}
            value={course.value}
            maxLength={60}
            onInput={(value) => {
              course.value = value;
            }}
          />
        </div>
        <label class={css.label} for={id}>
          {words.lines}
        </label>
        <textarea
          id={id}
          class={css.area}
          rows={12}
          value={typed.value}
          aria-describedby={`${id}-help`}
          onInput={(event) => {
            typed.value = event.currentTarget.value;
          }}
        />
        <p id={`${id}-help`}>{words.help(allWords.units[unit.value].long)}</p>
        <p role="status">{words.read(shots.length)}</p>
        <ul>
          {wrong.map(({ line, word }) => (
            <li key={line} class={css.warn}>
              {words.wrong(line, word)}
            </li>
          ))}
        </ul>
        <div class={css.keys}>
          <button
            type="submit"
            class={`${press.press} ${press.main}`}
            disabled={shots.length === 0 || wrong.length > 0}
          >
            {words.write}
          </button>
          <span role="status">{news.value}</span>
        </div>
      </form>
    </>
  );
}
