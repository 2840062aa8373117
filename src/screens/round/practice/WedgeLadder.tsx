import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { closeRound } from '../../../actions/closeRound.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import { logShot } from '../../../actions/logShot.ts';
import { withUnsaved } from '../../../actions/withUnsaved.ts';
import { type Club, specOn } from '../../../golf/club.ts';
import { inOrder } from '../../../golf/shotOrder.ts';
import { BALLS_A_RUNG, ladderBall, ladderDone, ladderRungs, nextRung, type Rung } from '../../../golf/wedgeLadder.ts';
import { liveUndo, type RoundWithShots } from '../../../logbook/live.ts';
import { clubName, swingName } from '../../clubName.ts';
import { type DistanceUnit, distanceWithUnit, inUnit } from '../../distance.ts';
import { lengthIn } from '../../lengthIn.ts';
import { openBook } from '../../openBook.ts';
import { ownSwings } from '../../ownSwings.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import press from '../../parts/Press.module.css';
import { addressOf, goTo } from '../../route.ts';
import { practiceWords as words } from '../../words/practice.ts';
import { Key } from '../shot/Key.tsx';
import { takeBack } from '../shot/takeBack.ts';
import { useWakeLock } from '../useWakeLock.ts';
import { LadderTable } from './LadderTable.tsx';
import { OwnSwings } from './OwnSwings.tsx';
import { PitchStrip } from './PitchStrip.tsx';
import type { PitchKey } from './pitchKeys.ts';
import { TargetField } from './TargetField.tsx';
import css from './WedgeLadder.module.css';

interface Props {
  readonly keeper: Keeper;
  /** A round of the practice ground that is open. */
  readonly of: RoundWithShots;
  readonly clubs: readonly Club[];
  readonly unit: DistanceUnit;
}

const NO_RUNG: Rung = { clubId: '', swing: 'full' };

/** The wedge ladder: ten balls a rung at a measured target, one tap a ball. */
export function WedgeLadder({ keeper, of: { round, shots: saved }, clubs, unit }: Props) {
  useWakeLock(true);
  const undoable = liveUndo(keeper.connection).value;
  const own = ownSwings.value;
  const climbing = useSignal<readonly string[]>([]);
  const chosen = useSignal<string | null>(null);
  const targets = useSignal<Readonly<Record<string, string>>>({});
  const status = useSignal('');

  const shots = inOrder(withUnsaved(keeper.unsaved.value, round.id, saved));
  const hit = new Set([...shots.map((shot) => shot.clubId), ...climbing.value]);
  const playable = clubs.filter((club) => club.kind !== 'putter' && (club.inBag || hit.has(club.id)));
  const onLadder = playable.filter((club) => club.kind === 'wedge' || hit.has(club.id));
  const book = openBook.value;
  const carryOf = ({ clubId, swing }: Rung) =>
    book.kind === 'ready'
      ? (book.book.cells.find((cell) => cell.clubId === clubId && cell.swing === swing)?.stock_m ?? null)
      : null;
  // The order of the rungs stays while the session lasts, whatever the book learns meanwhile.
  const isBookThere = book.kind === 'ready';
  const ladderOf = `${onLadder.map(({ id }) => id).join(' ')}|${own.map(({ swing }) => swing).join(' ')}|${isBookThere}`;
  const rungs = useMemo(() => ladderRungs(onLadder, own, carryOf, round.date), [ladderOf, round.date]);
  const done = ladderDone(rungs, shots);
  const keyOf = ({ clubId, swing }: Rung) => `${clubId} ${swing}`;
  const last = shots.at(-1);
  const started = chosen.value ?? (last?.clubId ? keyOf({ clubId: last.clubId, swing: last.swing }) : null);
  const index = Math.max(
    0,
    rungs.findIndex((rung) => keyOf(rung) === started),
  );
  const rung = rungs[index] ?? NO_RUNG;
  const balls = done[index]?.balls ?? 0;
  const club = clubs.find(({ id }) => id === rung.clubId);

  const lastTarget = shots.findLast((shot) => keyOf({ clubId: shot.clubId ?? '', swing: shot.swing }) === keyOf(rung));
  const usual = lastTarget?.flag_m ?? carryOf(rung);
  const typed = targets.value[keyOf(rung)] ?? (usual === null ? '' : String(Math.round(inUnit(usual, unit))));
  const nameOf = ({ clubId, swing }: Rung) => {
    const named = clubs.find(({ id }) => id === clubId);
    if (!named) return '';
    const name = clubName(named, specOn(named, round.date));
    return swing === 'full' ? words.rungFull(name) : words.rung(name, swingName(swing));
  };

  const log = async (key: PitchKey) => {
    const figure = Number(typed);
    if (!(figure > 0)) {
      status.value = words.targetWrong;
      return;
    }
    const pitched =
      key.kind === 'pitched'
        ? { kind: key.kind, long_m: lengthIn(key.long, unit) }
        : { kind: key.kind, least_short_m: lengthIn(key.by, unit) };
    const entry = ladderBall(rung, lengthIn(figure, unit), pitched, shots);
    const carry = entry.carry?.m ?? entry.carryAtMost_m;
    const inWords = entry.carry ? words.last : words.lastShort;
    chosen.value = keyOf(rung);
    navigator.vibrate?.(30);
    const outcome = await logShot(keeper, round.id, entry);
    if (outcome.kind === 'refused') status.value = words.refused;
    else if (outcome.kind === 'unsaved') status.value = words.notSaved;
    else status.value = carry === null ? '' : inWords(balls + 1, distanceWithUnit(carry, unit));
    const following = balls + 1 === BALLS_A_RUNG ? nextRung(ladderDone(rungs, [...shots, entry]), index) : null;
    if (following !== null) chosen.value = keyOf(rungs[following]);
  };
  const undo = async () => {
    const before = undoable.kind === 'ready' ? undoable.value : null;
    const { said, entry } = await takeBack(keeper, round.id, before, shots);
    if (entry?.clubId) chosen.value = keyOf({ clubId: entry.clubId, swing: entry.swing });
    status.value = said;
  };
  const climb = () => {
    const following = nextRung(done, index);
    if (following === null) status.value = words.climbed;
    else chosen.value = keyOf(rungs[following]);
  };
  const end = async () => {
    await closeRound(keeper, round.id);
    goTo('round', 'card', round.id);
  };

  return (
    <>
      <PageHead
        title={club ? nameOf(rung) : words.title}
        sub={`${balls < BALLS_A_RUNG ? words.ball(balls + 1, BALLS_A_RUNG) : words.extra(balls + 1)} · ${words.balls[round.ball]}`}
      />
      {club ? (
        <>
          <div class={css.ladder}>
            <p class={css.status} role="status">
              {status.value || words.where}
            </p>
            <TargetField
              unit={unit}
              value={typed}
              onInput={(value) => {
                targets.value = { ...targets.value, [keyOf(rung)]: value };
              }}
            />
            <PitchStrip onPitch={(key) => void log(key)} />
            <div class={css.row}>
              <Key onPress={() => void undo()}>{words.undo}</Key>
              <Key onPress={climb}>{words.next}</Key>
              <Key onPress={() => void end()}>{words.over}</Key>
            </div>
          </div>
          <LadderTable
            rungs={done}
            at={index}
            nameOf={nameOf}
            onChoose={(to) => {
              chosen.value = keyOf(rungs[to]);
              status.value = '';
            }}
          />
        </>
      ) : (
        <p>{words.noWedges}</p>
      )}
      <p class={css.section}>
        <a class={press.press} href={addressOf('round', 'log', round.id, '1')}>
          {words.oneByOne}
        </a>
      </p>
      <OwnSwings
        keeper={keeper}
        own={own}
        others={playable.filter((each) => !onLadder.includes(each))}
        nameOf={(each) => clubName(each, specOn(each, round.date))}
        onClub={(clubId) => {
          climbing.value = [...climbing.value, clubId];
          chosen.value = null;
        }}
      />
    </>
  );
}
