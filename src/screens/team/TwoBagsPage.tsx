import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { TeamPage } from '../../book/teamPage.ts';
import type { SeasonSpan } from '../../golf/seasonSpan.ts';
import { compute } from '../../worker/compute.ts';
import { dayWithYear } from '../day.ts';
import { PageHead } from '../parts/PageHead.tsx';
import { Field } from '../round/Field.tsx';
import { Select } from '../round/Select.tsx';
import { goBack } from '../route.ts';
import { teamCareWords } from '../words/teamCare.ts';
import css from './Team.module.css';
import { TwoBagsTables } from './TwoBagsTables.tsx';
import { bookText } from './teamPages.ts';
import type { TeamOnScreen } from './useTeam.ts';

const words = teamCareWords.two;

/** One side: a golfer, and the days that count; empty: all. */
interface Side {
  readonly playerId: string;
  readonly from: string;
  readonly to: string;
}

type Paged =
  | { readonly kind: 'none' }
  | { readonly kind: 'reckoning' }
  | { readonly kind: 'ready'; readonly page: TeamPage }
  | { readonly kind: 'failed'; readonly why: string };

const isSeason = ({ from, to }: Side) => from !== '' && to !== '' && from <= to;

/** The page of one side: the golfer's own, or reckoned from the rounds of some days alone. */
function useSide(team: TeamOnScreen, side: Side): Paged {
  const season = useSignal<Paged>({ kind: 'none' });
  const row = team.table.rows.find((one) => one.member.playerId === side.playerId);
  const key = isSeason(side) ? `${side.playerId} ${side.from} ${side.to}` : '';
  useEffect(() => {
    if (key === '') return undefined;
    let isNewest = true;
    const span: SeasonSpan = { from: side.from, to: side.to };
    const reckon = async (): Promise<Paged> => {
      const book = await bookText(side.playerId);
      if (!book?.text) return { kind: 'failed', why: words.shotsOnly };
      return { kind: 'ready', page: await compute('seasonPage', book.text, span) };
    };
    season.value = { kind: 'reckoning' };
    reckon()
      .catch((error: Error): Paged => ({ kind: 'failed', why: words.failed(error.message) }))
      .then((paged) => {
        if (isNewest) season.value = paged;
      });
    return () => {
      isNewest = false;
    };
  }, [key]);
  if (key !== '') return season.value;
  return row ? { kind: 'ready', page: row.member.page } : { kind: 'none' };
}

/** The fields of one side. */
function SideFields({
  team,
  side,
  label,
  onChange,
}: {
  readonly team: TeamOnScreen;
  readonly side: Side;
  readonly label: string;
  readonly onChange: (side: Side) => void;
}) {
  const isWrong = side.from !== '' && side.to !== '' && side.from > side.to;
  return (
    <fieldset class={css.bare}>
      <Select
        label={label}
        values={team.table.rows.map((row) => row.member.playerId)}
        words={Object.fromEntries(team.names)}
        value={side.playerId}
        onChoose={(playerId) => onChange({ ...side, playerId })}
      />
      <details class={css.details} open={isSeason(side)}>
        <summary>{words.seasons}</summary>
        <div class={css.fields}>
          <Field
            label={words.from}
            type="date"
            value={side.from}
            error={isWrong ? words.seasonWrong : undefined}
            onInput={(from) => onChange({ ...side, from })}
          />
          <Field label={words.to} type="date" value={side.to} onInput={(to) => onChange({ ...side, to })} />
        </div>
      </details>
    </fieldset>
  );
}

/** Two bags side by side, as a fitter and a player read them together. */
export function TwoBagsPage({ team }: { readonly team: TeamOnScreen }) {
  const ids = team.table.rows.map((row) => row.member.playerId);
  const first = useSignal<Side>({ playerId: ids[0] ?? '', from: '', to: '' });
  const second = useSignal<Side>({ playerId: ids[1] ?? ids[0] ?? '', from: '', to: '' });
  const sides = [first, second];
  const pages = [useSide(team, first.value), useSide(team, second.value)];
  const nameOf = ({ playerId, ...span }: Side) => {
    const name = team.names.get(playerId) ?? '';
    if (!isSeason({ playerId, ...span })) return name;
    return words.sameName(name, `${dayWithYear(span.from)} – ${dayWithYear(span.to)}`);
  };
  const [one, two] = pages;
  return (
    <>
      <PageHead title={words.title} sub={words.sub} onBack={() => goBack('team')} />
      {ids.length === 0 ? (
        <p class={css.group}>{words.choose}</p>
      ) : (
        <div class={css.group}>
          <div class={css.fields}>
            {sides.map((side, i) => (
              <SideFields
                key={i === 0 ? words.first : words.second}
                team={team}
                side={side.value}
                label={i === 0 ? words.first : words.second}
                onChange={(changed) => {
                  side.value = changed;
                }}
              />
            ))}
          </div>
          {pages.map((paged, i) =>
            paged.kind === 'failed' || paged.kind === 'reckoning' ? (
              <p key={i === 0 ? words.first : words.second} role="status">
                {paged.kind === 'failed' ? paged.why : words.reckoning}
              </p>
            ) : null,
          )}
        </div>
      )}
      {one.kind === 'ready' && two.kind === 'ready' && (
        <TwoBagsTables first={one.page} second={two.page} names={[nameOf(first.value), nameOf(second.value)]} />
      )}
    </>
  );
}
