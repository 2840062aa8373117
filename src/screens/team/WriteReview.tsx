import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { type ReviewTarget, reviewPlayers } from '../../actions/reviewPlayer.ts';
import { NOTE_LIMIT } from '../../golf/text.ts';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { Select } from '../round/Select.tsx';
import { handOverWords } from '../words/handOver.ts';
import { words as allWords } from '../words.ts';
import css from './Team.module.css';
import { teamKeeper } from './teamKeeper.ts';

const words = handOverWords.write;
const MOST_BALLS = 10_000;

interface Props {
  /** Choices of what it is about, by a key and in words; the empty key is the whole game. */
  readonly clubs: Readonly<Record<string, string>>;
  readonly swings: readonly string[];
  /** Rounds it may be about, by id and in words; none where several golfers are written to. */
  readonly rounds: Readonly<Record<string, string>>;
  /** Whom it is for when it is about that club. */
  readonly targetsFor: (club: string) => readonly ReviewTarget[];
  readonly nobody: string;
}

/** Balls as typed; null: none asked for; `wrong`: no such number. */
function readBalls(typed: string): number | null | 'wrong' {
  if (typed.trim() === '') return null;
  const balls = Number(typed);
  return Number.isInteger(balls) && balls >= 1 && balls <= MOST_BALLS ? balls : 'wrong';
}

/** The form in which a coach writes a note or a task, for one golfer or for many. */
export function WriteReview({ clubs, swings, rounds, targetsFor, nobody }: Props) {
  const id = useId();
  const [club, swing, round] = [useSignal(''), useSignal(''), useSignal('')];
  const [note, balls, due, news] = [useSignal(''), useSignal(''), useSignal(''), useSignal('')];
  const asked = readBalls(balls.value);
  const write = async (event: Event) => {
    event.preventDefault();
    if (asked === 'wrong') return;
    const targets = targetsFor(club.value);
    if (targets.length === 0) {
      news.value = nobody;
      return;
    }
    const task = asked === null && due.value === '' ? null : { balls: asked ?? 0, due: due.value || null };
    const draft = { note: note.value, task, swing: swing.value || null, roundId: round.value || null };
    const written = await reviewPlayers(teamKeeper, draft, targets);
    if (written.kind === 'saved') {
      news.value = words.written(written.value.length);
      note.value = '';
      balls.value = '';
      due.value = '';
    } else if (written.kind === 'refused') {
      news.value = written.why.path === 'note' ? words.empty : words.wrong(written.why.path);
    } else news.value = allWords.storage.why(written.why);
  };
  const withAny = (any: string, values: Readonly<Record<string, string>>) => ({ '': any, ...values });
  return (
    <form class={css.group} aria-label={words.title} onSubmit={(event) => void write(event)}>
      <h3>{words.title}</h3>
      <div class={css.fields}>
        <Select
          label={words.club}
          values={['', ...Object.keys(clubs)]}
          words={withAny(words.all, clubs)}
          value={club.value}
          onChoose={(value) => {
            club.value = value;
          }}
        />
        <Select
          label={words.swing}
          values={['', ...swings]}
          words={{ '': words.anySwing, ...Object.fromEntries(swings.map((each) => [each, each])) }}
          value={swing.value}
          onChoose={(value) => {
            swing.value = value;
          }}
        />
        {Object.keys(rounds).length > 0 && (
          <Select
            label={words.round}
            values={['', ...Object.keys(rounds)]}
            words={withAny(words.noRound, rounds)}
            value={round.value}
            onChoose={(value) => {
              round.value = value;
            }}
          />
        )}
      </div>
      <label class={css.label} for={id}>
        {words.note}
      </label>
      <textarea
        id={id}
        class={css.area}
        maxLength={NOTE_LIMIT}
        value={note.value}
        aria-describedby={`${id}-help`}
        onInput={(event) => {
          note.value = event.currentTarget.value;
        }}
      />
      <p id={`${id}-help`} class={css.quiet}>
        {words.noteHelp}
      </p>
      <div class={css.fields}>
        <Field
          label={words.balls}
          value={balls.value}
          keys="numeric"
          maxLength={5}
          error={asked === 'wrong' ? words.ballsWrong : undefined}
          onInput={(value) => {
            balls.value = value;
          }}
        />
        <Field
          label={words.due}
          type="date"
          value={due.value}
          onInput={(value) => {
            due.value = value;
          }}
        />
      </div>
      <div class={css.keys}>
        <button type="submit" class={`${press.press} ${press.main}`}>
          {words.write}
        </button>
        <span role="status">{news.value}</span>
      </div>
    </form>
  );
}
