import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import {
  type BookSummary,
  bookSummarySchema,
  isSummary,
  readSummary,
  summaryText,
} from '../../src/exchange/bookSummary.ts';
import { joinPages, MOST_QR_PAGES, QR_BYTES, qrPages } from '../../src/exchange/qrPages.ts';
import { clubKinds } from '../../src/golf/club.ts';
import { readValue, refusalsOf } from './reading.ts';

const tenth = (max: number) => fc.integer({ min: 10, max: max * 10 }).map((n) => n / 10);
const name = fc.stringMatching(/^[A-Za-z0-9° é'-]{0,20}$/);
const summary: fc.Arbitrary<BookSummary> = fc
  .record({
    player: fc.record({ id: fc.uuid(), name, units: fc.constantFrom('yards', 'metres') }),
    asOf: fc.constantFrom('2026-06-01T18:00:00Z', '2026-03-01T00:30:00.000Z'),
    clubs: fc.array(
      fc.record({
        id: fc.uuid(),
        kind: fc.constantFrom(...clubKinds),
        loft_deg: fc.integer({ min: 0, max: 180 }).map((n) => n / 2),
        name,
        cells: fc.array(
          fc.record({
            swing: fc.constantFrom('full', '9:00', '10:30'),
            stock_m: tenth(600),
            half80_m: tenth(100),
            shots: fc.nat(5000),
            lastOn: fc.constantFrom(null, '2026-02-28', '2024-02-29', '2026-06-01'),
          }),
          { maxLength: 4 },
        ),
      }),
      { maxLength: 14 },
    ),
  })
  .map((value) => z.parse(bookSummarySchema, value));

test('a summary comes back as it went, through text and through codes read in any order', () => {
  fc.assert(
    fc.property(summary, fc.infiniteStream(fc.nat()), (sent, order) => {
      const text = summaryText(sent);
      expect(isSummary(text)).toBe(true);
      expect(readValue(readSummary(text))).toEqual(sent);
      const pages = qrPages(text);
      if (!pages) throw new Error('too many codes');
      const mixed = pages.map((page) => ({ page, at: Number(order.next().value) })).sort((a, b) => a.at - b.at);
      const joined = joinPages([...mixed, ...mixed].map(({ page }) => page));
      expect(joined).toEqual({ kind: 'whole', text });
      if (pages.length > 1) expect(joinPages(pages.slice(1))).toMatchObject({ kind: 'part', of: pages.length });
      for (const page of pages) expect(Buffer.byteLength(page)).toBeLessThanOrEqual(QR_BYTES + 20);
    }),
  );
});

test('a summary that is bent is refused with its line, and no mark of a field gets through a name', () => {
  const [sent] = fc.sample(summary, { numRuns: 1, seed: 7 });
  const odd = { ...sent, player: { ...sent.player, name: 'a|b\nc' } };
  expect(readValue(readSummary(summaryText(odd))).player.name).toBe('a b c');
  const lines = summaryText({
    ...sent,
    clubs: [{ id: 'c', kind: 'iron', loft_deg: 34, name: '7', cells: [] } as never],
  }).split('\n');
  expect(refusalsOf(readSummary(['HELLO', ...lines.slice(1)].join('\n')))[0].path).toBe('line 1');
  expect(refusalsOf(readSummary([...lines.slice(0, 2), 'c|4|steep|7|'].join('\n')))[0].path).toBe('line 3');
  expect(refusalsOf(readSummary([lines[0], 'x|y|soon|n'].join('\n')))[0].path).toBe('line 2');
  expect(refusalsOf(readSummary([...lines.slice(0, 2), 'c|4|34|7|f,1400,30,5,99999999999'].join('\n')))[0].path).toBe(
    'line 3',
  );
});

test('codes of two texts, a foreign code and a changed one are told', () => {
  const one = qrPages('a'.repeat(1500)) ?? [];
  const other = qrPages('b'.repeat(1500)) ?? [];
  expect(one).toHaveLength(3);
  expect(joinPages([one[0], other[1]])).toEqual({ kind: 'not ours' });
  expect(joinPages(['WIFI:T:WPA;S:x;;'])).toEqual({ kind: 'not ours' });
  expect(joinPages([])).toEqual({ kind: 'not ours' });
  expect(joinPages([one[0], one[1], one[2].replace('aaa', 'aba')])).toEqual({ kind: 'not ours' });
  expect(qrPages('x'.repeat(QR_BYTES * MOST_QR_PAGES))).toHaveLength(MOST_QR_PAGES);
  expect(qrPages('x'.repeat(QR_BYTES * MOST_QR_PAGES + 1))).toBeNull();
});
