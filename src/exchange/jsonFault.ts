import { foundWords, quoted, type Refusal } from './refusal.ts';

const SPACE = /[ \t\n\r]*/y;
const ESCAPED = '"\\/bfnrt';
const ESCAPED_UNIT = /\\u[0-9a-fA-F]{4}/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;

function endOf(pattern: RegExp, text: string, from: number): number {
  pattern.lastIndex = from;
  return pattern.test(text) ? pattern.lastIndex : -1;
}

/** Where the text in double quotes that begins at `from` ends; −1 when it is none. A loop, as texts may be long. */
function endOfString(text: string, from: number): number {
  if (text[from] !== '"') return -1;
  let at = from + 1;
  while (at < text.length && text.charCodeAt(at) >= 0x20) {
    if (text[at] === '"') return at + 1;
    if (text[at] !== '\\') at += 1;
    else if (at + 1 < text.length && ESCAPED.includes(text[at + 1])) at += 2;
    else at = endOf(ESCAPED_UNIT, text, at);
    if (at < 0) return -1;
  }
  return -1;
}

interface Fault {
  readonly at: number;
  readonly expected: string;
}

/** The first place where a text stops being JSON; undefined when it is JSON. Source: RFC 8259. */
function firstFault(text: string): Fault | undefined {
  const open: ('{' | '[')[] = [];
  let at = 0;
  let wants: 'value' | 'value or end' | 'key' | 'key or end' | 'after' = 'value';
  for (;;) {
    at = endOf(SPACE, text, at);
    const mark = text[at];
    const inside = open.at(-1);
    if (wants === 'after') {
      if (inside === undefined) return at === text.length ? undefined : { at, expected: 'the end of the file' };
      const close = inside === '{' ? '}' : ']';
      if (mark === close) open.pop();
      else if (mark === ',') wants = inside === '{' ? 'key' : 'value';
      else return { at, expected: `a comma or ${close}` };
      at += 1;
    } else if (wants === 'key' || wants === 'key or end') {
      if (mark === '}' && wants === 'key or end') {
        open.pop();
        wants = 'after';
        at += 1;
        continue;
      }
      const end = endOfString(text, at);
      if (end < 0) return { at, expected: 'a key in double quotes' };
      at = endOf(SPACE, text, end);
      if (text[at] !== ':') return { at, expected: 'a colon after the key' };
      at += 1;
      wants = 'value';
    } else if (mark === ']' && wants === 'value or end') {
      open.pop();
      wants = 'after';
      at += 1;
    } else if (mark === '{' || mark === '[') {
      open.push(mark);
      wants = mark === '{' ? 'key or end' : 'value or end';
      at += 1;
    } else {
      const end = Math.max(endOfString(text, at), endOf(NUMBER, text, at), endOf(WORD, text, at));
      if (end < 0) return { at, expected: mark === '"' ? 'a text closed by a double quote' : 'a value' };
      at = end;
      wants = 'after';
    }
  }
}

/** Line and column of a place in a text, both from 1: `line 4, column 12`. */
export function placeIn(text: string, at: number): string {
  let line = 1;
  let begins = 0;
  for (let next = text.indexOf('\n'); next >= 0 && next < at; next = text.indexOf('\n', begins)) {
    line += 1;
    begins = next + 1;
  }
  return `line ${line}, column ${at - begins + 1}`;
}

/**
 * Why a text is no JSON, with line and column. The messages of the JavaScript engines differ and some
 * name no place, so the text is walked once more, only when parsing has failed.
 */
export function jsonFault(text: string): Refusal {
  const fault = firstFault(text);
  if (!fault) return { path: 'the file', expected: 'JSON', found: foundWords(text) };
  const rest = quoted(text.slice(fault.at, fault.at + 12));
  return {
    path: placeIn(text, fault.at),
    expected: fault.expected,
    found: fault.at >= text.length ? 'the end of the file' : rest === '' ? 'a character that cannot be shown' : rest,
  };
}
