import { useSignal } from '@preact/signals';
import { bringBack, type DeletedMember, deleteMember, deleteTeam, purgeSeason } from '../../actions/careTeam.ts';
import { savePlayer } from '../../actions/saveSettings.ts';
import { livePlayer } from '../../logbook/live.ts';
import { compute } from '../../worker/compute.ts';
import { dayWithYear } from '../day.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { goBack } from '../route.ts';
import { teamCareWords } from '../words/teamCare.ts';
import { words as allWords } from '../words.ts';
import { lastSeason } from './lastSeason.ts';
import css from './Team.module.css';
import { teamKeeper } from './teamKeeper.ts';
import type { TeamOnScreen } from './useTeam.ts';

const words = teamCareWords.care;

/** Purging of a season: from and to a day, or the last school year at one press. */
function Purge() {
  const [from, to, news] = [useSignal(''), useSignal(''), useSignal('')];
  const last = lastSeason(new Date(teamKeeper.clock.now()).toISOString().slice(0, 10));
  const purge = async (event: Event) => {
    event.preventDefault();
    if (from.value === '' || to.value === '' || from.value > to.value) {
      news.value = words.spanWrong;
      return;
    }
    const work = (...args: Parameters<Parameters<typeof purgeSeason>[1]>) => compute('purgedMember', ...args);
    const purged = await purgeSeason(teamKeeper, work, { from: from.value, to: to.value }, null);
    news.value =
      purged.kind === 'saved' ? words.purged(purged.value) : words.notSaved(allWords.storage.why(purged.why));
  };
  return (
    <form class={css.group} aria-labelledby="purge" onSubmit={(event) => void purge(event)}>
      <h2 id="purge">{words.season}</h2>
      <p class={css.quiet}>{words.seasonSays}</p>
      <div class={css.keys}>
        <button
          type="button"
          class={press.press}
          onClick={() => {
            from.value = last.from;
            to.value = last.to;
          }}
        >
          {words.roll(dayWithYear(last.from), dayWithYear(last.to))}
        </button>
      </div>
      <div class={css.fields}>
        <Field
          label={words.from}
          type="date"
          value={from.value}
          onInput={(value) => {
            from.value = value;
          }}
        />
        <Field
          label={words.to}
          type="date"
          value={to.value}
          onInput={(value) => {
            to.value = value;
          }}
        />
      </div>
      <div class={css.keys}>
        <button type="submit" class={press.press}>
          {words.purge}
        </button>
        <span role="status">{news.value}</span>
      </div>
    </form>
  );
}

/** The name under which reviews are written; it belongs to this device and stands in each review. */
function CoachName() {
  const player = livePlayer(teamKeeper.connection).value;
  const news = useSignal('');
  if (player.kind !== 'ready') return null;
  const save = async (name: string) => {
    const saved = await savePlayer(teamKeeper, { name });
    news.value = saved.kind === 'saved' ? words.saved : '';
  };
  return (
    <section class={css.group}>
      <Field label={words.coach} value={player.value.name} maxLength={60} onCommit={(name) => void save(name)} />
      <p role="status">{news.value}</p>
    </section>
  );
}

/** Who is on this device, how to take anybody off it, and minors' data in plain words. */
export function CarePage({ team }: { readonly team: TeamOnScreen }) {
  const news = useSignal('');
  const isSure = useSignal(false);
  const marks = team.blocks.filter(({ kind }) => kind !== 'salt').length;
  const last = useSignal<DeletedMember | null>(null);
  const remove = async (playerId: string, name: string) => {
    const removed = await deleteMember(teamKeeper, playerId);
    if (removed.kind === 'refused') return;
    if (removed.kind === 'saved') last.value = removed.value;
    news.value = removed.kind === 'saved' ? words.removed(name) : words.notSaved(allWords.storage.why(removed.why));
  };
  const undo = async (deleted: DeletedMember) => {
    const back = await bringBack(teamKeeper, deleted);
    if (back.kind === 'saved') last.value = null;
    news.value = back.kind === 'saved' ? words.back : words.notSaved(allWords.storage.why(back.why));
  };
  const removeAll = async () => {
    if (!isSure.value) {
      isSure.value = true;
      return;
    }
    const removed = await deleteTeam(teamKeeper);
    isSure.value = false;
    news.value = removed.kind === 'saved' ? words.allDone : words.notSaved(allWords.storage.why(removed.why));
  };
  return (
    <>
      <PageHead title={words.title} sub={words.sub(team.members.length)} onBack={() => goBack('team')} />
      <section class={css.group}>
        <p role="status">{news.value}</p>
        {last.value && (
          <div class={css.keys}>
            <button type="button" class={press.press} onClick={() => last.value && void undo(last.value)}>
              {words.undo}
            </button>
            <span class={css.quiet}>{words.undoSays}</span>
          </div>
        )}
        <ul class={css.rows}>
          {team.members.map(({ playerId, rounds, shots, firstOn, lastOn }) => {
            const name = team.names.get(playerId) ?? '';
            return (
              <li key={playerId}>
                <span>
                  <b>{name}</b>{' '}
                  <span class={css.quiet}>
                    {words.line(rounds, shots, firstOn && dayWithYear(firstOn), lastOn && dayWithYear(lastOn))}
                  </span>
                </span>
                <button type="button" class={press.press} onClick={() => void remove(playerId, name)}>
                  {words.remove(name)}
                </button>
              </li>
            );
          })}
        </ul>
        {marks > 0 && <p class={css.quiet}>{words.blocked(marks)}</p>}
      </section>
      <section class={css.group} aria-labelledby="minors">
        <h2 id="minors">{words.minors}</h2>
        <ul class={css.says}>
          {words.says.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
      <CoachName />
      <Purge />
      <section class={css.group} aria-labelledby="all">
        <h2 id="all">{words.all}</h2>
        <p class={css.quiet}>{words.allSays}</p>
        <div class={css.keys}>
          <button type="button" class={press.press} onClick={() => void removeAll()}>
            {isSure.value ? words.allSure : words.all}
          </button>
        </div>
      </section>
    </>
  );
}
