// Long because it is where the shot in hand, the putts and the end of a hole come together.
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { deleteShot } from '../../../actions/deleteShot.ts';
import { editShot } from '../../../actions/editShot.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import { endedAs } from '../../../golf/endedAs.ts';
import { holeScore } from '../../../golf/holeScore.ts';
import { nextShot } from '../../../golf/nextShot.ts';
import { provisionalEntry, provisionalInPlay } from '../../../golf/provisional.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import { countsAsStroke, shotsOfHole } from '../../../golf/shotOrder.ts';
import { liveClubs, livePlayer } from '../../../logbook/live.ts';
import { carryError } from '../../../yardages/carryError.ts';
import { type DistanceUnit, plusMinusOfError, wholeDistance } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { figure } from '../../words.ts';
import { asShot } from './asShot.ts';
import { clubsOfBag, nameOfClub } from './clubsOfBag.ts';
import { HoleOver } from './HoleOver.tsx';
import { Key } from './Key.tsx';
import { KeyGrid } from './KeyGrid.tsx';
import type { NextBall } from './LiePad.tsx';
import { LoggedLines } from './LoggedLines.tsx';
import { moveFocus } from './moveFocus.ts';
import { PuttPad } from './PuttPad.tsx';
import { puttFigure } from './puttLength.ts';
import { Sentence } from './Sentence.tsx';
import { enterDistance, ShotPad } from './ShotPad.tsx';
import css from './ShotPage.module.css';
import { sentenceParts } from './sentenceParts.ts';
import { newForm, openSlot, type ShotForm, skip, typeDigit } from './shotForm.ts';
import { mayReckon } from './shotLine.ts';
import { type Asking, isNumberSlot } from './slots.ts';
import { useLogging } from './useLogging.ts';
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

/** Logs the shots of one hole: each as a sentence with slots, then the putts, until the score falls out. */
export function ShotPage(props: Props) {
  return <ShotPageOfHole key={`${props.round.id} ${props.hole} ${props.editing?.id ?? ''}`} {...props} />;
}

function ShotPageOfHole({ keeper, round, shots: stored, hole: number, editing, onDone, nextLabel }: Props) {
  const page = useRef<HTMLElement>(null);
  const upper = useRef<HTMLDivElement>(null);
  const live = liveClubs(keeper.connection).value;
  const player = livePlayer(keeper.connection).value;
  const clubs = live.kind === 'ready' ? live.value : [];
  const { units: unit, hand } = player.kind === 'ready' ? player.value : ({ units: 'yards', hand: 'right' } as const);
  const bag = useMemo(() => clubsOfBag(clubs, round), [clubs, round.bag, round.date]);
  const par = round.holes.find((hole) => hole.number === number)?.par ?? null;
  const wedges = useMemo(() => new Set(bag.filter((club) => club.kind === 'wedge').map((club) => club.id)), [bag]);
  const asking: Asking = { par, wedges };

  const logging = useLogging({ keeper, round, shots: stored, hole: number, editing, asking, onDone });
  const putterId = bag.find((club) => club.kind === 'putter')?.id ?? null;
  const putts = usePutts(keeper, round, number, putterId, unit, logging.say);

  const onHole = shotsOfHole(logging.shots, number);
  const score = holeScore(putts.hole, onHole);
  const next = nextShot(number, onHole);
  const last = onHole.filter(countsAsStroke).at(-1) ?? null;
  const isOver = score.kind !== 'not started' && score.kind !== 'in play';
  const asksFirstBall = logging.form === null && !isOver && onHole.at(-1)?.outcome === 'provisional unused';
  const fresh = next.kind === 'shot' ? newForm(next.entry, wayKnown(round), asking) : null;
  const form = logging.form ?? (isOver || asksFirstBall ? null : fresh);
  const isPutting = form === null && !isOver && !asksFirstBall;

  const focusOn = `${form?.slot ?? ''} ${isOver} ${isPutting} ${putts.length} ${form?.typed === '' || isNumberSlot(form?.slot ?? null) === false} ${form?.entry.number}`;
  const focusedOn = useRef(focusOn);
  useEffect(() => {
    if (focusedOn.current === focusOn) return;
    focusedOn.current = focusOn;
    const active = document.activeElement;
    if (active && active !== document.body && !page.current?.contains(active)) return;
    page.current?.querySelector<HTMLElement>('[data-pad] [data-key], [data-pad] textarea')?.focus({
      preventScroll: true,
    });
  }, [focusOn]);
  useEffect(() => {
    upper.current?.scrollTo(0, upper.current.scrollHeight);
  }, [onHole.length, isOver, isPutting]);

  if (live.kind === 'loading' || player.kind === 'loading' || !logging.isReady) {
    return (
      <section class={css.page} role="status">
        {shotWords.status.loading}
      </section>
    );
  }

  const change = logging.change;
  const edit = (shot: Shot, changes: Parameters<typeof editShot>[2]) => void editShot(keeper, shot, changes);

  function nextBall(ball: NextBall): void {
    const start = (place: 'drop' | 'same place') => {
      const next = nextShot(number, onHole, place);
      if (next.kind === 'shot') change(newForm(next.entry, wayKnown(round), asking));
    };
    switch (ball.kind) {
      case 'drop':
        if (last && ball.strokes > 0) edit(last, { penalty: last.penalty + ball.strokes });
        return start('drop');
      case 'same place':
        if (last) edit(last, { penalty: last.penalty + 1 });
        return start('same place');
      case 'provisional':
        return change(newForm(provisionalEntry(number, onHole), wayKnown(round), asking));
      case 'ended':
        if (last) edit(last, endedAs(ball.outcome));
        return logging.drop();
      case 'over':
        logging.drop();
        return putts.end(ball.result);
    }
  }

  function firstBall(found: 'found' | 'lost' | 'out of bounds' | 'play on'): void {
    if (found === 'found' && fresh) return change(fresh);
    if (found === 'play on') return nextBall({ kind: 'provisional' });
    if (!last || found === 'found') return;
    for (const { id, changes } of provisionalInPlay(onHole, last.id, found)) edit({ ...last, id }, changes);
  }

  function onKeyDown(event: KeyboardEvent): void {
    const { key, target } = event;
    if (event.repeat && (key === 'Enter' || key === ' ')) return event.preventDefault();
    if (target instanceof HTMLTextAreaElement || event.altKey || event.metaKey) return;
    if (form && event.ctrlKey && key === 'Enter') {
      event.preventDefault();
      return logging.finish(form);
    }
    if (event.ctrlKey) return;
    if (form && isNumberSlot(form.slot)) {
      if (/^\d$/.test(key)) return typed(typeDigit(form, key));
      if (key === 'Backspace' && form.typed !== '') return typed(typeDigit(form, null));
      if (key === 'Enter' && form.typed !== '') {
        event.preventDefault();
        return enter(form);
      }
    }
    if (page.current && moveFocus(page.current, key)) event.preventDefault();
  }

  function typed(next: ShotForm): void {
    if (next.typed.length === 3) return enter(next);
    change(next);
  }

  function enter(form: ShotForm): void {
    const entered = enterDistance(form, form.typed, unit, asking);
    if (typeof entered !== 'string') return change(entered);
    change({ ...form, typed: '' });
    logging.say(entered);
  }

  const { keys, question } = shotWords;
  const asked = form
    ? form.slot === null
      ? question.ready
      : form.slot === 'rest' && editing
        ? question.restEdit
        : question[form.slot]
    : asksFirstBall
      ? question.provisional
      : isPutting
        ? puttQuestion(putts.hole.putts.length, putts.length)
        : '';
  const parts = form && sentenceParts(form, { club: nameOfClub(clubs, form.entry.clubId, round.date), unit, asking });
  const carry = form?.entry.carry && mayReckon(round) ? carryWords(form, round.id, unit) : null;
  const hasBegun = logging.form !== null;
  const isAside = form?.slot === 'more' || form?.slot === 'note' || form?.slot === 'flag by' || form?.slot === 'aim';

  return (
    // The keys of the whole page: digits for the open slot, arrows from key to key.
    <section
      ref={page}
      class={css.page}
      data-hand={hand}
      aria-label={shotWords.pageLabel(figure(number))}
      onKeyDown={onKeyDown}
    >
      <div ref={upper} class={css.upper}>
        {!editing && <LoggedLines shots={onHole} clubs={clubs} round={round} unit={unit} isSaved={logging.isSaved} />}
        {parts && <Sentence parts={parts} onOpen={(slot) => form && change(openSlot(form, slot))} />}
        {(isPutting || isOver) && putts.hole.putts.length > 0 && (
          <p class={css.putts}>{puttWords(putts.hole.putts, unit)}</p>
        )}
        {isOver && <HoleOver hole={number} score={score} />}
        {!putts.isSaved && <p class={css.unsaved}>{shotWords.status.puttsFirst}</p>}
        <p class={css.status} role="status">
          {[carry, logging.status].filter((said) => said).join(' ')}
        </p>
      </div>
      <div class={css.lower}>
        {asked !== '' && <h2 class={css.question}>{asked}</h2>}
        <div data-pad="" class={css.pad}>
          {form && (
            <ShotPad
              form={form}
              round={round}
              bag={bag}
              last={last}
              unit={unit}
              asking={asking}
              onChange={change}
              onBall={nextBall}
              {...(editing
                ? { onDelete: () => void deleteShot(keeper, editing).then(() => leave(logging.drop, onDone)) }
                : {})}
            />
          )}
          {asksFirstBall && (
            <KeyGrid
              columns={2}
              keys={[
                { id: 'found', face: keys.found, onPress: () => firstBall('found') },
                { id: 'lost', face: shotWords.ends.lost, onPress: () => firstBall('lost') },
                { id: 'out', face: shotWords.ends['out of bounds'], onPress: () => firstBall('out of bounds') },
                { id: 'on', face: keys.playOn, look: 'quiet', onPress: () => firstBall('play on') },
              ]}
            />
          )}
          {isPutting && (
            <PuttPad
              before={putts.hole.putts.length}
              length={putts.length}
              unit={unit}
              onLength={putts.choose}
              onHoled={putts.holed}
              onMissed={putts.missed}
              onNotGreen={() => last && edit(last, { restLie: null })}
              onOver={putts.end}
            />
          )}
        </div>
        <div class={`${css.actions} ${form ? '' : css.few}`} role="group" aria-label={shotWords.actionsLabel}>
          {editing && !hasHistory(logging.form, editing) ? (
            <Key onPress={() => leave(logging.drop, onDone)}>{keys.leave}</Key>
          ) : (
            <Key onPress={() => (isPutting && putts.length !== null ? putts.choose(null) : logging.undo())}>
              {keys.undo}
            </Key>
          )}
          {form && (
            <>
              <Key isPressed={form.slot === 'more'} onPress={() => change(openSlot(form, 'more'))}>
                {keys.more}
              </Key>
              <Key onPress={() => change(skip(form, asking))}>{isAside ? keys.done : keys.skip}</Key>
              <Key look="main" isOff={!hasBegun} onPress={() => logging.finish(form)}>
                {editing ? keys.keep : keys.log}
              </Key>
            </>
          )}
          {isOver && !form && (
            <Key look="main" onPress={onDone}>
              {nextLabel ?? shotWords.over.next}
            </Key>
          )}
        </div>
      </div>
    </section>
  );
}

function leave(drop: () => void, onDone: () => void): void {
  drop();
  onDone();
}

/** Whether anything of the shot being changed differs from what is logged. */
function hasHistory(form: ShotForm | null, shot: Shot): boolean {
  const changed = form?.entry;
  return (
    changed !== undefined &&
    Object.keys(changed).some((key) => JSON.stringify(changed[key as 'note']) !== JSON.stringify(shot[key]))
  );
}

function carryWords(form: ShotForm, roundId: string, unit: DistanceUnit): string {
  const shot = asShot(form.entry, roundId, 'in-hand');
  const { carry } = shot;
  if (!carry) return '';
  return shotWords.carry(
    wholeDistance(carry.m, unit),
    plusMinusOfError(carryError(shot), unit),
    shotWords.unitShort[unit],
  );
}

function puttQuestion(before: number, length: number | null): string {
  const { putts } = shotWords;
  if (length !== null) return putts.holed;
  return before === 0 ? putts.first : putts.next(figure(before + 1));
}

function puttWords(putts: Round['holes'][number]['putts'], unit: DistanceUnit): string {
  const words = shotWords.putts;
  const each = putts.map(({ length_m, holed }) => {
    if (length_m === null) return words.one(words.noLength, holed);
    return words.one(`${figure(puttFigure(length_m, unit))} ${words.unit[unit]}`, holed);
  });
  return words.sentence(each.join('; '));
}
