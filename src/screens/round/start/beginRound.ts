import type { Keeper } from '../../../actions/keeper.ts';
import { setHole } from '../../../actions/setHole.ts';
import { startRound } from '../../../actions/startRound.ts';
import type { RoundStart } from '../../../golf/newRound.ts';
import type { Degrees } from '../../../units/degrees.ts';
import { freezeBook } from '../../freezeBook.ts';
import { goTo } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { words as allWords } from '../../words.ts';
import type { NumberField } from './startForm.ts';

const { start: words } = roundWords;

/** Whether the round began; if not, why in words, and the field to look at when it is one. */
export type Begun =
  | { readonly kind: 'begun' }
  | { readonly kind: 'not begun'; readonly says: string; readonly field?: NumberField };

/** The field of the form behind a path of the record. */
const FIELDS: Readonly<Record<string, NumberField>> = {
  startHole: 'startHole',
  'conditions.temperature_C': 'temperature',
  'conditions.altitude_m': 'altitude',
  'conditions.pressure_hPa': 'pressure',
  'conditions.wind_mps': 'windSpeed',
};

/**
 * Starts the round and goes to its first hole, whose bearing is noted when the golfer told it. A round by
 * the Rules freezes the book first; one that is entered afterwards was played from paper, and nothing is frozen.
 */
export async function beginRound(
  keeper: Keeper,
  start: RoundStart,
  bearing_deg: Degrees | null,
  when: 'now' | 'afterwards' = 'now',
): Promise<Begun> {
  const freezing = start.play === 'rules' && when === 'now' ? await freezeBook(keeper) : null;
  if (freezing?.kind === 'not frozen') return { kind: 'not begun', says: words.notFrozen(freezing.why) };
  const outcome = await startRound(keeper, freezing ? { ...start, frozenBook: freezing.frozenBook } : start);
  if (outcome.kind === 'unsaved') return { kind: 'not begun', says: allWords.storage.why(outcome.why) };
  if (outcome.kind === 'saved') {
    const round = outcome.value;
    if (bearing_deg !== null) await setHole(keeper, round.id, round.startHole, { bearing_deg });
    goTo('round');
    return { kind: 'begun' };
  }
  const { why } = outcome;
  if (why.kind === 'round open') return { kind: 'not begun', says: words.roundOpen };
  if (why.kind === 'too many clubs') return { kind: 'not begun', says: words.tooMany(why.clubs) };
  const field = FIELDS[why.path];
  return { kind: 'not begun', says: words.notValid(why.path), ...(field ? { field } : {}) };
}
