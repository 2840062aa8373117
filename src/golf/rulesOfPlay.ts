import { bagGate } from './bagGate.ts';
import { type BagChange, bagChanged } from './bagInPlay.ts';
import type { Clause } from './clause.ts';
import { permissions } from './permissions.ts';
import type { Round } from './round.ts';

/** How play stands. All of it follows from what is stored, so it outlives a reload, a kill and an update. */
export type PlayState =
  | { readonly kind: 'no round' }
  | {
      readonly kind: 'round';
      readonly round: Round;
      /** Ids of the clubs carried now; `round.bag` are those it was started with. */
      readonly carried: readonly string[];
    };

/** What can be looked up. Only the card and what stands behind a number of it are the same wherever the ball lies. */
export type LookedUp = 'card' | 'number' | 'search' | 'neighbours' | 'day card' | 'plan';

/** What the golfer or the phone does that the Rules may have a word on. */
export type PlayEvent =
  | { readonly kind: 'start'; readonly round: Round; readonly phonesAllowed: boolean }
  | { readonly kind: 'log' | 'close' | 'reload' | 'settings' | 'stoppage' | 'resume' | 'mark' }
  /** Takes back something of the open round, or something done before it that its frozen book rests on. */
  | { readonly kind: 'undo'; readonly of: 'open round' | 'evidence' }
  | { readonly kind: 'edit' | 'delete'; readonly roundId: string }
  | { readonly kind: 'reopen'; readonly round: Round }
  | { readonly kind: 'import' | 'share' | 'update' | 'change evidence' }
  | { readonly kind: 'bag'; readonly change: BagChange }
  | { readonly kind: 'look up'; readonly what: LookedUp };

/** Why something is not done: a clause of the Rules, or that there is no round, or another one, to do it in. */
export type Refusing = Clause | 'no round' | 'round open' | 'phones not allowed' | 'own choice';

/** Whether something may be done, and how play stands after it. */
export type PlayVerdict =
  | { readonly kind: 'allowed'; readonly state: PlayState }
  | { readonly kind: 'not allowed'; readonly why: Refusing };

/** How play stands, from the open round (null: none) and the clubs in the bag. */
export function playState(open: Round | null, inBag: readonly string[]): PlayState {
  return open === null || open.closed ? { kind: 'no round' } : { kind: 'round', round: open, carried: inBag };
}

const notAllowed = (why: Refusing): PlayVerdict => ({ kind: 'not allowed', why });

function started(state: PlayState, round: Round, phonesAllowed: boolean): PlayVerdict {
  if (state.kind === 'round') return notAllowed('round open');
  if (!phonesAllowed) return notAllowed('phones not allowed');
  const gate = bagGate(round.bag.map(() => ({ inBag: true })));
  if (round.play === 'rules' && gate.kind === 'too many') return notAllowed('4.1b');
  return { kind: 'allowed', state: playState({ ...round, closed: false }, round.bag) };
}

/**
 * What the Rules say of an event, and how play stands after it: the whole of the app's conduct during a round in
 * one function without side effects.
 *
 * A stoppage does not end the round, so nothing thaws; nor does a reload. Where phones are not allowed no round is
 * opened: the golfer plays from the paper card and enters the shots afterwards.
 *
 * Source: R&A and USGA, Rules of Golf (2023), Rules 4.1a, 4.1b, 4.1c, 4.3a, 5.7 and Model Local Rule G-5, from
 * memory; read conservatively where they leave room.
 */
export function judge(state: PlayState, event: PlayEvent): PlayVerdict {
  const open = state.kind === 'round' ? state.round : null;
  const may = permissions(open);
  const stays: PlayVerdict = { kind: 'allowed', state };
  const needsRound = open === null ? notAllowed('no round') : stays;
  switch (event.kind) {
    case 'start':
      return started(state, event.round, event.phonesAllowed);
    case 'reopen':
      return open !== null && open.id !== event.round.id
        ? notAllowed('round open')
        : { kind: 'allowed', state: playState({ ...event.round, closed: false }, event.round.bag) };
    case 'close':
      return open === null ? notAllowed('no round') : { kind: 'allowed', state: { kind: 'no round' } };
    case 'log':
      return needsRound;
    case 'edit':
    case 'delete':
      return event.roundId === open?.id || may.changingEvidence ? stays : notAllowed('4.3a');
    case 'mark':
      if (open === null) return notAllowed('no round');
      return may.locating ? stays : notAllowed('G-5');
    case 'import':
      return may.importing ? stays : notAllowed('4.3a');
    case 'share':
      return may.sharing ? stays : notAllowed('4.3a');
    case 'change evidence':
      return may.changingEvidence ? stays : notAllowed('4.3a');
    case 'update':
      return may.updating ? stays : notAllowed('own choice');
    case 'look up':
      return may.reckoning || event.what === 'card' || event.what === 'number' ? stays : notAllowed('4.3a');
    case 'bag':
      return bagEvent(state, event.change);
    case 'undo':
      return event.of === 'open round' || may.changingEvidence ? stays : notAllowed('4.3a');
    case 'reload':
    case 'settings':
    case 'stoppage':
    case 'resume':
      return stays;
  }
}

function bagEvent(state: PlayState, change: BagChange): PlayVerdict {
  if (state.kind === 'no round' || state.round.play !== 'rules') return { kind: 'allowed', state };
  const verdict = bagChanged({ startedWith: state.round.bag.length, carried: state.carried }, change);
  return verdict.kind === 'allowed'
    ? { kind: 'allowed', state: { ...state, carried: verdict.bag.carried } }
    : notAllowed(verdict.clause);
}
