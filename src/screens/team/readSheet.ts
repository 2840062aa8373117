import { clubColumn } from '../../book/clubColumn.ts';
import type { TeamClub } from '../../book/teamPage.ts';
import { lies } from '../../golf/lie.ts';
import { type ProposedShot, proposalSchema } from '../../golf/proposal.ts';
import { strikeField } from '../../golf/shot.ts';
import { readSwing } from '../../golf/swing.ts';
import type { DistanceUnit } from '../distance.ts';
import { lengthIn } from '../lengthIn.ts';
import { teamWords } from '../words/team.ts';

/** One line of a paper sheet as it was read. */
export type SheetLine =
  | { readonly kind: 'shot'; readonly shot: ProposedShot }
  /** What in it cannot be understood. */
  | { readonly kind: 'wrong'; readonly line: number; readonly word: string };

const plain = (text: string) => text.toLowerCase().replace(/[°\s.]/g, '');

/** Every way to write a club: its name, what the team calls it, and short forms such as `7i`, `3w`, `4h`, `56`. */
function shortForms(club: TeamClub): string[] {
  const { kind, mark } = clubColumn(club);
  const letter = {
    driver: 'd',
    'fairway wood': 'w',
    hybrid: 'h',
    'driving iron': 'di',
    iron: 'i',
    wedge: '',
    putter: '',
  }[kind];
  return [club.name, teamWords.club({ kind, mark }), kind === 'driver' ? letter : `${mark}${letter}`]
    .map(plain)
    .filter(Boolean);
}

/** The longest run of words from a place on that names one of some things; null: none does. */
function longest<T>(
  words: readonly string[],
  from: number,
  find: (text: string) => T | undefined,
): { found: T; to: number } | null {
  for (let to = Math.min(words.length, from + 3); to > from; to--) {
    const found = find(plain(words.slice(from, to).join('')));
    if (found !== undefined) return { found, to };
  }
  return null;
}

const LIES = new Map(lies.map((lie) => [plain(lie), lie] as const));

/**
 * A paper shot sheet as typed, a shot a line in the order of entry: hole, club, and in any order swing, lie,
 * strike and carry: `3 56° 9:00 fairway 72 solid`. What is left out stays open; an empty line is passed over.
 *
 * @param unit of carries without one; `150y` and `137m` say their own.
 */
export function readSheet(typed: string, clubs: readonly TeamClub[], unit: DistanceUnit): SheetLine[] {
  const byName = new Map(clubs.flatMap((club) => shortForms(club).map((name) => [name, club.clubId] as const)));
  return typed.split('\n').flatMap((text, i): SheetLine[] => {
    const words = text.split(/[\s,;]+/).filter(Boolean);
    if (words.length === 0) return [];
    const wrong = (word: string): SheetLine[] => [{ kind: 'wrong', line: i + 1, word }];
    const hole = Number(words[0]);
    if (!Number.isInteger(hole) || hole < 1 || hole > 54) return wrong(words[0]);
    const club = longest(words, 1, (name) => byName.get(name));
    if (!club) return wrong(words.slice(1).join(' ') || words[0]);
    const shot = { hole, clubId: club.found, swing: 'full', lie: null, strike: null, carry_m: null } as Record<
      string,
      unknown
    >;
    for (let at = club.to; at < words.length; ) {
      const word = words[at].toLowerCase();
      const carry = /^(\d{1,3}(?:\.\d)?)(y|yd|m)?$/.exec(word);
      const lie = longest(words, at, (name) => LIES.get(name));
      const swing = word === 'full' ? 'full' : readSwing(word);
      if (swing) shot.swing = swing;
      else if (lie) {
        shot.lie = lie.found;
        at = lie.to;
        continue;
      } else if (strikeField.safeParse(word).success) shot.strike = word;
      else if (carry && shot.carry_m === null) {
        const said = carry[2] === 'm' ? 'metres' : carry[2] ? 'yards' : unit;
        shot.carry_m = lengthIn(Number(carry[1]), said);
      } else return wrong(words[at]);
      at += 1;
    }
    const read = proposalSchema.shape.shots.safeParse([shot]);
    return read.success ? [{ kind: 'shot', shot: read.data[0] }] : wrong(text.trim());
  });
}
