// Long because the shot in hand, the putts and the end of a hole come together here.
import { useSignal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { editShot } from '../../../actions/editShot.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import type { Club } from '../../../golf/club.ts';
import { holeScore } from '../../../golf/holeScore.ts';
import { nextShot } from '../../../golf/nextShot.ts';
import { permissions } from '../../../golf/permissions.ts';
import { provisionalInPlay, type ShotEdit } from '../../../golf/provisional.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import { blankEntry, type ShotEntry } from '../../../golf/shotEntry.ts';
import { countsAsStroke, shotsOfHole } from '../../../golf/shotOrder.ts';
import { liveClubs, livePlayer } from '../../../logbook/live.ts';
import { marksWords } from '../../words/marks.ts';
import { shotWords } from '../../words/shot.ts';
import { figure } from '../../words.ts';
import { MarkBar } from '../marks/MarkBar.tsx';
import { MarkKey } from '../marks/MarkKey.tsx';
import { markedForm } from '../marks/markedForm.ts';
import { useMarking } from '../marks/useMarking.ts';
import { ActionRow } from './ActionRow.tsx';
import { carryText, puttsText } from './carryText.ts';
import { clubsOfBag, nameOfClub } from './clubsOfBag.ts';
import { enterDistance } from './enterDistance.ts';
import { type FirstBall, FirstBallPad } from './FirstBallPad.tsx';
import { HoleOver } from './HoleOver.tsx';
import { LoggedLines } from './LoggedLines.tsx';
import { ballPlayed, type NextBall } from './nextBall.ts';
import { PuttPad } from './PuttPad.tsx';
import { Sentence } from './Sentence.tsx';
import { ShotPad } from './ShotPad.tsx';
import css from './ShotPage.module.css';
import { sentenceParts } from './sentenceParts.ts';
import { newForm, openSlot, type ShotForm, skip, typeDigit } from './shotForm.ts';
import { puttQuestion, slotQuestion } from './slotQuestion.ts';
import { type Asking, isNumberSlot } from './slots.ts';
import { largestFigure } from './spokenDistance.ts';
import { useLogging } from './useLogging.ts';
import { useFocusOnPad, usePageKeys } from './usePageKeys.ts';
import { usePutts } from './usePutts.ts';
import { wayKnown } from './wayKnown.ts';

interface Props {
  readonly keeper: Keeper;
  /** The round in play, live. */
  readonly round: Round;
  /** Shots of the whole round, as stored. */
  readonly shots: readonly Shot[];
  readonly hole: number;
  /** The shot to change; absent: the next one is logged. */
  readonly editing?: Shot;
  /** The change is made or left; or, the hole being over, the golfer goes on. */
  readonly onDone: () => void;
  /** What stands on the key that goes on when the hole is over. */
  readonly nextLabel?: string;
}

const NO_CLUBS: readonly Club[] = [];
/** Until the golfer is read from the logbook. */
const USUAL_PLAYER = { units: 'yards', hand: 'right' } as const;

/** Logs the shots of one hole: each as a sentence with slots, then the putts, until the score falls out. */
export function ShotPage(props: Props) {
  return <ShotPageOfHole key={`${props.round.id} ${props.hole} ${props.editing?.id ?? ''}`} {...props} />;
}

function ShotPageOfHole({ keeper, round, shots: stored, hole: number, editing, onDone, nextLabel }: Props) {
  const page = useRef<HTMLElement>(null);
  const said = useRef<HTMLDivElement>(null);
  const live = liveClubs(keeper.connection).value;
  const player = livePlayer(keeper.connection).value;
  const clubs = live.kind === 'ready' ? live.value : NO_CLUBS;
  const { units: unit, hand } = player.kind === 'ready' ? player.value : USUAL_PLAYER;
  const bag = useMemo(() => clubsOfBag(clubs, round), [clubs, round]);
  const asking = useMemo((): Asking => {
    const par = round.holes.find((hole) => hole.number === number)?.par ?? null;
    return { par, wedges: new Set(bag.filter((club) => club.kind === 'wedge').map((club) => club.id)) };
  }, [bag, round, number]);

  const logging = useLogging({ keeper, round, shots: stored, hole: number, editing, asking, onDone });
  const putterId = bag.find((club) => club.kind === 'putter')?.id ?? null;
  const putts = usePutts(keeper, round, number, putterId, unit, logging.say);

  const onHole = shotsOfHole(logging.shots, number);
  const last = onHole.filter(countsAsStroke).at(-1) ?? null;
  const score = holeScore(putts.hole, onHole);
  const isOver = score.kind !== 'not started' && score.kind !== 'in play';
  const start = (entry: ShotEntry) => newForm(entry, wayKnown(round), asking);
  const next = nextShot(number, onHole);
  const isFirstFound = useSignal(false);
  const asksFirstBall =
    logging.form === null && !isOver && !isFirstFound.value && onHole.at(-1)?.outcome === 'provisional unused';
  const isFresh = logging.form === null && !isOver && !asksFirstBall && next.kind === 'shot';
  const form = isFresh ? start(next.entry) : logging.form;
  const isPutting = form === null && !isOver && !asksFirstBall;

  const isUnits = form !== null && isNumberSlot(form.slot) && form.typed !== '';
  const kind = form ? form.slot : isPutting ? `putt ${putts.length}` : isOver ? 'over' : 'first ball';
  useFocusOnPad(page, `${kind} ${isUnits} ${onHole.length} ${putts.hole.putts.length}`);
  useEffect(() => {
    const lines = said.current;
    if (lines && !form) lines.scrollTo(0, lines.scrollHeight);
  });
  const { change } = logging;
  const marking = useMarking({
    round,
    shots: logging.shots,
    entry: form?.entry ?? blankEntry(number, 1),
    unit,
    onMark: (place, changes, before) => {
      if (form) change(markedForm(form, place, changes, asking));
      if (before) edit([before]);
    },
  });
  const edit = (edits: readonly ShotEdit[]) => {
    for (const { id, changes } of edits) {
      void editShot(keeper, { id, roundId: round.id }, changes).then((outcome) => {
        if (outcome.kind === 'refused') logging.say(shotWords.status.gone);
      });
    }
  };
  const play = (ball: NextBall) => {
    const { edits, entry } = ballPlayed(ball, number, onHole);
    edit(edits);
    if (entry) change(start(entry));
    else logging.drop();
  };
  const decideFirst = (became: FirstBall) => {
    if (became === 'play on') play({ kind: 'provisional' });
    else if (became !== 'found') edit(last ? provisionalInPlay(onHole, last.id, became) : []);
    else isFirstFound.value = true;
  };
  const enter = (form: ShotForm) => {
    const entered = enterDistance(form, form.typed, unit, asking);
    change(entered.kind === 'entered' ? entered.form : { ...form, typed: '' });
    if (entered.kind === 'outside') logging.say(shotWords.status.outside(figure(largestFigure(unit))));
  };
  const onDigit = (digit: string | null) => {
    const now = logging.now() ?? form;
    if (!now || !isNumberSlot(now.slot)) return false;
    const typed = typeDigit(now, digit);
    if (typed.typed.length === 3) enter(typed);
    else change(typed);
    return true;
  };
  const onEnter = () => {
    const now = logging.now();
    const isTyping = now !== null && isNumberSlot(now.slot) && now.typed !== '';
    if (isTyping) enter(now);
    return isTyping;
  };
  const log = (form: ShotForm) => {
    if (logging.form !== null) logging.finish(form);
  };
  const typed = usePageKeys(page, { onDigit, onEnter, onLog: () => form && log(form) });
  const leave = () => {
    logging.drop();
    onDone();
  };
  const end = (result: 'picked up' | 'conceded') => {
    logging.drop();
    putts.end(result);
  };

  if (live.kind === 'loading' || player.kind === 'loading' || !logging.isReady) {
    return (
      <p class={css.page} role="status">
        {shotWords.status.loading}
      </p>
    );
  }

  const asked = form
    ? slotQuestion(form)
    : asksFirstBall
      ? shotWords.question.provisional
      : isPutting
        ? puttQuestion(putts.hole.putts.length, putts.length, unit)
        : '';
  const mayMark = form !== null && !editing && marking.isAllowed;
  const club = form && nameOfClub(clubs, form.entry.clubId, round.date);
  const carry = form && permissions(round).measuring ? carryText(form, unit) : '';
  return (
    <section ref={page} class={css.page} data-hand={hand} aria-label={shotWords.pageLabel(figure(number))}>
      <div class={css.upper}>
        {/* It scrolls in its place when the sentence is long, and a keyboard must reach it to scroll. */}
        <div ref={said} class={css.said}>
          {!editing && <LoggedLines shots={onHole} clubs={clubs} round={round} unit={unit} isSaved={logging.isSaved} />}
          {form && (
            <Sentence
              parts={sentenceParts(form, { club, unit, asking })}
              onOpen={(slot) => change(openSlot(form, slot))}
            />
          )}
          {!form && putts.hole.putts.length > 0 && <p class={css.putts}>{puttsText(putts.hole.putts, unit)}</p>}
          {isOver && !form && <HoleOver hole={number} score={score} />}
          {!putts.isSaved && <p class={css.unsaved}>{shotWords.status.puttsFirst}</p>}
          {mayMark && <MarkBar marking={marking} unit={unit} />}
          <p class={css.status} role="status">
            {[carry, logging.status].filter((words) => words !== '').join(' ')}
          </p>
        </div>
      </div>
      {asked !== '' && <h2 class={css.question}>{typed === '' ? asked : `${asked} ${typed}_`}</h2>}
      {mayMark && form.slot === 'more' && marking.location.kind === 'off' && (
        <p class={css.question}>{marksWords.off}</p>
      )}
      <div data-pad="">
        {form && (
          <ShotPad
            form={form}
            round={round}
            bag={bag}
            last={last}
            unit={unit}
            asking={asking}
            onChange={change}
            onBall={play}
            onOver={end}
            marking={mayMark ? marking : null}
          />
        )}
        {asksFirstBall && <FirstBallPad onChoose={decideFirst} />}
        {isPutting && (
          <PuttPad
            before={putts.hole.putts.length}
            length={putts.length}
            unit={unit}
            onLength={putts.choose}
            onHoled={putts.holed}
            onMissed={putts.missed}
            onNotGreen={() => edit(last ? [{ id: last.id, changes: { restLie: null } }] : [])}
            onOver={end}
          />
        )}
      </div>
      <ActionRow
        form={form}
        isEditing={editing !== undefined}
        canLog={logging.form !== null}
        mark={mayMark && <MarkKey marking={marking} />}
        nextLabel={isOver && !form ? (nextLabel ?? shotWords.over.next) : null}
        onUndo={() => (isPutting && putts.length !== null ? putts.choose(null) : logging.undo())}
        onLeave={leave}
        onMore={() => form && change(openSlot(form, 'more'))}
        onSkip={() => form && change(skip(form, asking))}
        onLog={() => form && log(form)}
        onNext={onDone}
      />
    </section>
  );
}
