/** What was typed towards a key and has not pressed one yet, and what may still follow a key just pressed. */
export interface Typing {
  readonly typed: string;
  /** The rest of the word whose first letters pressed a key: typed on, it presses nothing else. */
  readonly rest: string;
  readonly at_ms: number;
}

/** Nothing typed. */
export const NOTHING_TYPED: Typing = { typed: '', rest: '', at_ms: Number.NEGATIVE_INFINITY };

/** A key found by what was typed: of the pad, or of the row below it that is always there. */
export interface TypedKey {
  readonly of: 'pad' | 'row';
  readonly index: number;
}

/** The faces of the keys that can be typed, in the order they stand. */
export interface Faces {
  readonly pad: readonly string[];
  readonly row: readonly string[];
}

export interface Typed {
  readonly typing: Typing;
  /** The key to press; null: none yet. */
  readonly press: TypedKey | null;
}

/** How long a pause may be within one word, milliseconds. Own choice: three slow keystrokes. */
const ONE_WORD_MS = 800;

/** Letters of a row key that must be typed: its single letters belong to the pads. */
const LEAST_OF_ROW = 2;

function plain(face: string): string {
  return face.toLowerCase().replace(/[^\p{L}\d]/gu, '');
}

function initials(face: string): string {
  const words = face.toLowerCase().match(/[\p{L}\d]+/gu) ?? [];
  return words.length > 1 ? words.map((word) => word.charAt(0)).join('') : '';
}

/** The keys whose faces begin with what was typed, or whose words do: `7i` for 7 iron, `lr` for light rough. */
export function typedKeys(faces: Faces, typed: string): TypedKey[] {
  if (typed === '') return [];
  const found = (of: TypedKey['of']) =>
    faces[of].flatMap((face, index): TypedKey[] =>
      plain(face).startsWith(typed) || initials(face) === typed ? [{ of, index }] : [],
    );
  const onPad = found('pad');
  return onPad.length > 0 || typed.length < LEAST_OF_ROW ? onPad : found('row');
}

/** Whether a key begins with what was typed, be it too little yet to find one of the row. */
function leadsOn(faces: Faces, typed: string): boolean {
  return typedKeys(faces, typed).length > 0 || faces.row.some((face) => plain(face).startsWith(typed));
}

function faceOf(faces: Faces, key: TypedKey): string {
  return plain(faces[key.of][key.index] ?? '');
}

/** The key that Enter means: the one whose face was typed in full, or else the first that begins so; null: none does. */
export function meantKey(faces: Faces, typed: string): TypedKey | null {
  const found = typedKeys(faces, typed);
  return found.find((key) => faceOf(faces, key) === typed) ?? found[0] ?? null;
}

/**
 * Takes one character. A key is pressed once it is the only one that begins so; a lone digit waits, for it may be the
 * first of `7i` or `54`. A character that no key goes on with begins anew, and one that belongs to the word of the key
 * just pressed is passed over.
 */
export function typeAhead(faces: Faces, before: Typing, character: string, at_ms: number): Typed {
  const letter = plain(character);
  const isInWord = at_ms - before.at_ms <= ONE_WORD_MS;
  if (letter === '') return { typing: before, press: null };
  if (isInWord && before.rest.startsWith(letter)) {
    return { typing: { typed: '', rest: before.rest.slice(letter.length), at_ms }, press: null };
  }
  const longer = `${before.typed}${letter}`;
  const typed = leadsOn(faces, longer) ? longer : letter;
  const found = typedKeys(faces, typed);
  const [only] = found;
  if (only === undefined)
    return { typing: { typed: leadsOn(faces, typed) ? typed : '', rest: '', at_ms }, press: null };
  if (found.length > 1 || /^\d$/.test(typed)) return { typing: { typed, rest: '', at_ms }, press: null };
  const face = faceOf(faces, only);
  const rest = face.startsWith(typed) ? face.slice(typed.length) : '';
  return { typing: { typed: '', rest, at_ms }, press: only };
}
