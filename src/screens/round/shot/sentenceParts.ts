import type { Metres } from '../../../units/metres.ts';
import { swingName } from '../../clubName.ts';
import { type DistanceUnit, wholeDistance } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { pitchOf } from './pitch.ts';
import type { ShotForm } from './shotForm.ts';
import { type Asking, playsAtFlag, type Slot } from './slots.ts';
import { spotWords } from './spotWords.ts';

/** A piece of a shot's sentence: words that join, or a slot that is tapped. */
export type SentencePart =
  | { readonly kind: 'words'; readonly text: string }
  | {
      readonly kind: 'slot';
      readonly slot: Slot;
      readonly text: string;
      readonly isOpen: boolean;
      readonly isActive: boolean;
    };

/** What a sentence is written with. */
export interface Writing {
  /** What the golfer calls the club; null: none is chosen. */
  readonly club: string | null;
  readonly unit: DistanceUnit;
  readonly asking: Asking;
}

const { sentence } = shotWords;

/** Begins a sentence with a capital letter. */
function capital(text: string): string {
  return text.charAt(0).toLocaleUpperCase() + text.slice(1);
}

/**
 * A shot half entered as a sentence with slots: `54° at 9:00 from fairway, flag 78 by laser, struck
 * solid, pitched 4 short, 3 left, now on the green.` What was not said stands as `…`, and in the slot
 * being filled as what is asked. Slots that this shot does not need are left out unless filled.
 */
export function sentenceParts(form: ShotForm, writing: Writing): SentencePart[] {
  const { entry, typed } = form;
  const { unit } = writing;
  const parts: SentencePart[] = [];
  const say = (text: string) => parts.push({ kind: 'words', text });
  const slot = (name: Slot, value: string | null) => {
    const isActive = form.slot === name;
    const digits = isActive && typed !== '' ? `${typed}_` : null;
    const asked = isActive && name !== 'more' ? shotWords.asked[name] : shotWords.open;
    parts.push({
      kind: 'slot',
      slot: name,
      text: digits ?? value ?? asked,
      isOpen: (digits ?? value) === null,
      isActive,
    });
  };
  const distance = (name: Slot, before: string, value: Metres | null) => {
    if (value === null && form.slot !== name) return;
    say(before);
    slot(name, value === null ? null : wholeDistance(value, unit));
  };

  if (entry.outcome === 'provisional unused') say(sentence.provisional);
  slot('club', writing.club);
  if (writing.club !== null && (entry.intent !== 'chip' || entry.swing !== 'full' || form.slot === 'swing')) {
    say(entry.swing === 'full' ? ' ' : sentence.at);
    slot('swing', entry.swing === 'full' ? shotWords.swing.full : swingName(entry.swing));
  }
  if (entry.intent !== 'normal') say(sentence.intended(shotWords.intents[entry.intent]));
  say(entry.fromDrop ? sentence.fromDrop : sentence.from);
  slot('lie', entry.lie === null ? null : shotWords.lies[entry.lie]);
  if (entry.tags.length > 0) say(sentence.tagged(entry.tags.map((tag) => shotWords.tags[tag]).join(', ')));

  // A hole whose par nobody noted may be a par 3: its tee shot is not asked for a flag, but can have one.
  const mayHaveFlag = entry.lie === 'tee' && writing.asking.par === null;
  if (entry.flag_m !== null || playsAtFlag(entry, writing.asking) || mayHaveFlag || form.slot === 'flag') {
    say(sentence.flag);
    slot('flag', entry.flag_m === null ? null : wholeDistance(entry.flag_m, unit));
  }
  if (entry.flag_m !== null || form.slot === 'flag by') {
    say(sentence.by);
    slot('flag by', shotWords.knownBy[form.by]);
  }
  if (entry.aim.long_m !== 0 || entry.aim.right_m !== 0 || form.slot === 'aim') {
    say(sentence.aimed);
    slot('aim', spotWords(entry.aim, unit));
  }
  say(sentence.struck);
  slot('strike', entry.strike === null ? null : shotWords.strikes[entry.strike]);

  const spot = pitchOf(entry);
  const isOther = [entry.total, entry.carryAtLeast_m, entry.carryAtMost_m].some((measure) => measure !== null);
  if (spot !== null || (entry.flag_m !== null && entry.carry === null && !isOther) || form.slot === 'pitch') {
    say(sentence.pitched);
    slot('pitch', spot && spotWords(spot, unit));
  }
  distance('carry', sentence.carried, spot === null ? (entry.carry?.m ?? null) : null);
  distance('total', sentence.total, entry.total?.m ?? null);
  distance('cleared', sentence.cleared, entry.carryAtLeast_m);
  distance('short of', sentence.shortOf, entry.carryAtMost_m);

  say(sentence.rest);
  slot('rest', restWords(form));
  if (entry.note !== '' || form.slot === 'note') {
    say(sentence.note);
    slot('note', entry.note === '' ? null : entry.note);
  } else say(sentence.end);
  return parts.map((part, index) => (index === 0 ? { ...part, text: capital(part.text) } : part));
}

function restWords({ entry }: ShotForm): string | null {
  const { outcome, restLie } = entry;
  if (restLie !== null) return sentence.onRest[restLie];
  if (outcome === 'in play' || outcome === 'provisional unused') return null;
  return outcome === 'holed' ? sentence.onRest.holed : sentence.ended[outcome];
}

/** The sentence read out: its pieces in one line. */
export function sentenceText(parts: readonly SentencePart[]): string {
  return parts.map(({ text }) => text).join('');
}
