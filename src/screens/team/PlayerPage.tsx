import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { noteLooked } from '../../actions/noteLooked.ts';
import type { CarrybookFile } from '../../exchange/carrybookFile.ts';
import type { Review } from '../../golf/review.ts';
import { WEDGE_SWINGS } from '../../golf/swing.ts';
import { compute } from '../../worker/compute.ts';
import { dayWithYear, moment } from '../day.ts';
import { openCarrybookFile } from '../more/opening.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf, goBack } from '../route.ts';
import { handOverWords } from '../words/handOver.ts';
import { paperSheetWords } from '../words/paperSheet.ts';
import { teamWords } from '../words/team.ts';
import { words as allWords } from '../words.ts';
import { HandBack } from './HandBack.tsx';
import { PlayerGaps } from './PlayerGaps.tsx';
import { PlayerNumbers } from './PlayerNumbers.tsx';
import { PlayerScoring } from './PlayerScoring.tsx';
import css from './Team.module.css';
import { teamClubName } from './teamClubName.ts';
import { teamKeeper } from './teamKeeper.ts';
import { bookText, momentOf } from './teamPages.ts';
import type { TeamOnScreen } from './useTeam.ts';
import { WriteReview } from './WriteReview.tsx';

const words = teamWords.player;

/** The whole file of a golfer, read in the worker; null until it is there, or when only numbers were handed over. */
function useBook(playerId: string, hash: string | undefined): CarrybookFile | null {
  const file = useSignal<CarrybookFile | null>(null);
  useEffect(() => {
    let isNewest = true;
    const read = async () => {
      const book = await bookText(playerId);
      if (!book?.text) return;
      const reading = await compute('readFile', book.text);
      if (isNewest && reading.kind === 'read' && reading.value.kind === 'carrybook') file.value = reading.value.file;
    };
    file.value = null;
    read().catch((error) => console.error('the book of a golfer', error));
    return () => {
      isNewest = false;
    };
  }, [playerId, hash]);
  return file.value;
}

/** One golfer of the team: what wants work, what changed, what was written, and the way to their book. */
export function PlayerPage({ team, playerId }: { readonly team: TeamOnScreen; readonly playerId: string }) {
  const news = useSignal('');
  const member = team.members.find((one) => one.playerId === playerId);
  const file = useBook(playerId, member?.hash);
  const back = () => goBack('team');
  const row = team.table.rows.find((one) => one.member.playerId === playerId);
  if (!member) {
    return (
      <>
        <PageHead title={teamWords.title} onBack={back} />
        <p class={css.group} role="status">
          {words.gone}
        </p>
      </>
    );
  }
  const name = team.names.get(playerId) ?? '';
  const { daysAhead, at } = momentOf(member);
  const head = (
    <PageHead
      title={name}
      sub={
        member.from === 'shots'
          ? words.sub(member.rounds, member.shots, dayWithYear(at))
          : words.summaryOnly(dayWithYear(at))
      }
      onBack={back}
    />
  );
  if (!row) {
    return (
      <>
        {head}
        <p class={css.group} role="status">
          {teamWords.reckoning(1)}
        </p>
      </>
    );
  }
  const { page, looked } = row.member;
  const rounds = Object.fromEntries(
    (file?.rounds ?? [])
      .toSorted((a, b) => (a.date < b.date ? 1 : -1))
      .map(({ id, date, course }) => [id, `${dayWithYear(date)}${course ? `, ${course}` : ''}`]),
  );
  const aboutWords = ({ about }: Review) =>
    [
      about.clubId === null ? null : teamClubName(page, about.clubId),
      about.swing,
      about.roundId === null ? null : handOverWords.reviews.aboutRound(rounds[about.roundId] ?? about.roundId),
    ]
      .filter(Boolean)
      .join(' ') || handOverWords.reviews.aboutAll;
  const look = async () => {
    const noted = await noteLooked(
      teamKeeper,
      playerId,
      page.numbers.filter(({ shots }) => shots > 0).map(({ clubId, swing, stock_m }) => ({ clubId, swing, stock_m })),
    );
    if (noted.kind === 'unsaved') news.value = allWords.storage.why(noted.why);
  };
  return (
    <>
      {head}
      {daysAhead > 0 && <p class={css.group}>{words.ahead(daysAhead)}</p>}
      <div class={`${css.group} ${css.keys}`}>
        {file && (
          <button type="button" class={press.press} onClick={() => openCarrybookFile({ ...file, exportedAt: at })}>
            {words.see}
          </button>
        )}
        <a class={press.press} href={addressOf('team', 'paper', playerId)}>
          {paperSheetWords.link}
        </a>
        <button type="button" class={press.press} onClick={() => void look()}>
          {words.noteLooked}
        </button>
        <span class={css.quiet} role="status">
          {news.value || (looked ? words.looked(moment(looked.at)) : words.neverLooked)}
        </span>
      </div>
      <PlayerNumbers row={row} columns={team.table.columns} />
      <PlayerGaps page={page} />
      <PlayerScoring page={page} />
      <div class={css.group}>
        <WriteReview
          clubs={Object.fromEntries(page.clubs.map(({ clubId }) => [clubId, teamClubName(page, clubId)]))}
          swings={['full', ...[...WEDGE_SWINGS].reverse()]}
          rounds={rounds}
          targetsFor={(club) => [{ playerId, clubId: club || null }]}
          nobody=""
        />
      </div>
      <HandBack
        member={member}
        name={member.name}
        reviews={team.reviews.filter((stored) => stored.playerId === playerId)}
        aboutWords={aboutWords}
      />
      <section class={css.group}>
        <p class={css.quiet}>{words.removeSays}</p>
        <div class={css.keys}>
          <a class={press.press} href={addressOf('team', 'care')}>
            {words.remove}
          </a>
        </div>
      </section>
    </>
  );
}
