import { useSignal } from '@preact/signals';
import type { ReviewTarget } from '../../actions/reviewPlayer.ts';
import { removeGroup, saveGroup } from '../../actions/teamGroups.ts';
import { clubColumn, columnKey } from '../../book/clubColumn.ts';
import { WEDGE_SWINGS } from '../../golf/swing.ts';
import type { StoredGroup } from '../../logbook/teamStore.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { Select } from '../round/Select.tsx';
import { goBack } from '../route.ts';
import { teamWords } from '../words/team.ts';
import { teamCareWords } from '../words/teamCare.ts';
import { words as allWords } from '../words.ts';
import css from './Team.module.css';
import { teamKeeper } from './teamKeeper.ts';
import type { TeamOnScreen } from './useTeam.ts';
import { WriteReview } from './WriteReview.tsx';

const words = teamCareWords.groups;

/** One group, or a new one: its name and who is in it. */
function GroupForm({ team, group }: { readonly team: TeamOnScreen; readonly group: StoredGroup | null }) {
  const name = useSignal(group?.name ?? '');
  const chosen = useSignal<ReadonlySet<string>>(new Set(group?.playerIds ?? []));
  const news = useSignal('');
  const save = async (event: Event) => {
    event.preventDefault();
    const saved = await saveGroup(teamKeeper, {
      id: group?.id ?? null,
      name: name.value,
      playerIds: [...chosen.value],
    });
    if (saved.kind === 'saved' && !group) {
      name.value = '';
      chosen.value = new Set();
    }
    const trouble = saved.kind === 'unsaved' ? allWords.storage.why(saved.why) : words.noName;
    news.value = saved.kind === 'saved' ? words.saved : trouble;
  };
  const turn = (playerId: string) => {
    const next = new Set(chosen.value);
    if (!next.delete(playerId)) next.add(playerId);
    chosen.value = next;
  };
  const title = group?.name ?? words.new;
  return (
    <form class={css.group} aria-label={title} onSubmit={(event) => void save(event)}>
      <h2>{title}</h2>
      <Field
        label={words.name}
        value={name.value}
        maxLength={60}
        onInput={(value) => {
          name.value = value;
        }}
      />
      <fieldset class={css.bare}>
        <legend class={css.label}>{words.members}</legend>
        <div class={css.fields}>
          {team.members.map(({ playerId }) => (
            <label key={playerId} class={css.check}>
              <input type="checkbox" checked={chosen.value.has(playerId)} onChange={() => turn(playerId)} />
              {team.names.get(playerId)}
            </label>
          ))}
        </div>
      </fieldset>
      <div class={css.keys}>
        <button type="submit" class={press.press}>
          {words.save}
        </button>
        {group && (
          <button type="button" class={press.press} onClick={() => void removeGroup(teamKeeper, group.id)}>
            {words.remove(group.name)}
          </button>
        )}
        <span role="status">{news.value}</span>
      </div>
    </form>
  );
}

/** Groups of the team, and one review for all of a group. */
export function GroupsPage({ team }: { readonly team: TeamOnScreen }) {
  const whose = useSignal('');
  const group = team.groups.find(({ id }) => id === whose.value);
  const members = team.table.rows
    .map((row) => row.member)
    .filter(({ playerId }) => !group || group.playerIds.includes(playerId));
  const clubs = Object.fromEntries(
    team.table.columns.map(({ club }) => [columnKey(club), teamWords.club(club)] as const),
  );
  const targetsFor = (key: string) =>
    members.flatMap(({ playerId, page }): ReviewTarget[] => {
      if (key === '') return [{ playerId, clubId: null }];
      const club = page.clubs.find((one) => columnKey(clubColumn(one)) === key);
      return club ? [{ playerId, clubId: club.clubId }] : [];
    });
  return (
    <>
      <PageHead title={words.title} sub={words.sub} onBack={() => goBack('team')} />
      {team.groups.length === 0 && <p class={css.group}>{words.none}</p>}
      {team.groups.map((each) => (
        <GroupForm key={each.id} team={team} group={each} />
      ))}
      <GroupForm team={team} group={null} />
      {team.table.rows.length > 0 && (
        <section class={css.group} aria-labelledby="group-review">
          <h2 id="group-review">{words.review}</h2>
          <Select
            label={words.reviewFor}
            values={['', ...team.groups.map(({ id }) => id)]}
            words={{
              '': teamWords.look.everybody,
              ...Object.fromEntries(team.groups.map(({ id, name }) => [id, name])),
            }}
            value={whose.value}
            onChoose={(value) => {
              whose.value = value;
            }}
          />
          <WriteReview
            clubs={clubs}
            swings={['full', ...[...WEDGE_SWINGS].reverse()]}
            rounds={{}}
            targetsFor={targetsFor}
            nobody={words.noneHas}
          />
        </section>
      )}
    </>
  );
}
