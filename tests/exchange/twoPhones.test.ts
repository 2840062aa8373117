import fc from 'fast-check';
import { expect, test } from 'vitest';
import { carrybookFileOf, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { mergeLogbooks } from '../../src/exchange/merge.ts';
import { memberTexts, takeInMember } from '../../src/exchange/takeInMember.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import type { Shot } from '../../src/golf/shot.ts';
import { carried, logbookOf } from '../book/logbooks.ts';

/** What may happen: one of the two phones logs, edits or deletes, or hands a file to the other or to the coach. */
type Step =
  | { readonly do: 'log' | 'delete' | 'edit'; readonly phone: 0 | 1; readonly which: number }
  | { readonly do: 'hand over'; readonly phone: 0 | 1; readonly to: 'other' | 'coach' };

const phone = fc.constantFrom(0 as const, 1 as const);
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ do: fc.constant('log' as const), phone, which: fc.nat(20) }) },
  fc.record({ do: fc.constantFrom('edit' as const, 'delete' as const), phone, which: fc.nat(20) }),
  fc.record({ do: fc.constant('hand over' as const), phone, to: fc.constantFrom('other' as const, 'coach' as const) }),
);

test('two phones of one player and a coach, files handed about in any order: no shot is lost or doubled', () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 5, maxLength: 40 }), (steps) => {
      const phones: [Logbook, Logbook] = [logbookOf(), logbookOf()];
      /** What should be there, kept plainly: the note that each shot not deleted carries. */
      const expected = new Map<string, string>();
      let coach: string | null = null;
      let clock = Date.parse('2026-06-01T08:00:00Z');
      const take = (logbook: Logbook) => {
        const text = writeCarrybookFile(carrybookFileOf(logbook, new Date(clock).toISOString(), 'share'));
        const read = memberTexts(text);
        if (read.kind !== 'members') throw new Error(read.kind);
        coach = takeInMember(read.members[0].text, coach, []).text;
      };
      for (const [n, now] of steps.entries()) {
        clock += 60_000;
        const changedAt = new Date(clock).toISOString();
        const device = `d${now.phone}`;
        const here = phones[now.phone];
        const other = now.phone === 0 ? 1 : 0;
        if (now.do === 'hand over') {
          if (now.to === 'coach') take(here);
          else phones[other] = mergeLogbooks(phones[other], here);
          continue;
        }
        if (now.do === 'log') {
          const shot: Shot = { ...carried(`s${n}`, 140), note: `${n}`, changedAt, device };
          phones[now.phone] = { ...here, shots: [...here.shots, shot] };
          expected.set(shot.id, shot.note);
          continue;
        }
        // A phone changes only what it has; the clock is one, so the change is the latest there is.
        const shot = here.shots[now.which % Math.max(1, here.shots.length)];
        if (!shot) continue;
        const others = here.shots.filter(({ id }) => id !== shot.id);
        if (now.do === 'edit') {
          phones[now.phone] = { ...here, shots: [...others, { ...shot, note: `${n}`, changedAt, device }] };
          expected.set(shot.id, `${n}`);
        } else {
          const dead = { id: shot.id, of: 'shot' as const, at: changedAt, device };
          phones[now.phone] = { ...here, shots: others, deleted: [...here.deleted, dead] };
          expected.delete(shot.id);
        }
      }
      for (const each of phones) take(each);
      if (coach === null) throw new Error('nothing was taken in');
      const shots = (JSON.parse(coach) as Logbook).shots;
      expect(new Map(shots.map(({ id, note }) => [id, note]))).toEqual(expected);
      expect(shots).toHaveLength(expected.size);
    }),
    { numRuns: 500 },
  );
});
