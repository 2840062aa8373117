import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import type { Report } from '../../src/book/reportJson.ts';
import { brokenFiles } from '../fixtures/brokenFiles.ts';
import { smallFile } from '../fixtures/smallFile.ts';

const folder = mkdtempSync(join(tmpdir(), 'carrybook-report-'));
afterAll(() => rmSync(folder, { recursive: true }));

const command = fileURLToPath(new URL('../../.scripts/report.mjs', import.meta.url));

function run(...args: string[]): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...args], { encoding: 'utf8' });
  return { code: status, out: stdout, err: stderr };
}

let files = 0;
function saved(content: unknown): string {
  const path = join(folder, `${files++}.json`);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

function json(path: string, ...args: string[]): Report {
  const { code, out, err } = run(path, '--json', ...args);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return JSON.parse(out);
}

const small = saved(smallFile());

// Each run starts a program of its own, and the first one bundles it.
describe('the report command', { timeout: 60_000 }, () => {
  test('prints tables in the golfer’s units', () => {
    const { code, out, err } = run(small);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out.split('\n')[0]).toBe('Wren: book as of 2026-06-01T18:00:00Z, in yards');
    expect(out).toMatch(/\n {2}7 iron +33° +\d+ +± \d+ /);
    const metric = smallFile();
    metric.player.units = 'metres';
    expect(run(saved(metric)).out.split('\n')[0]).toMatch(/in metres$/);
  });

  test('prints the books as JSON, as of the export', () => {
    const report = json(small);
    expect(report).toMatchObject({ format: 'carrybook-report', version: 1, asOf: '2026-06-01T18:00:00Z' });
    expect(report.players.map(({ player }) => player)).toEqual(['p1']);
    const [{ cells, leftOut }] = report.players;
    const names = cells.map(({ clubId, specId, swing }) => `${clubId} ${specId} ${swing}`);
    expect(names).toEqual(
      expect.arrayContaining([
        'c7 c7b full',
        'c7 c7a full',
        ...['full', '10:30', '9:00', '7:30'].map((s) => `w52 w52a ${s}`),
      ]),
    );
    expect(names).toHaveLength(6);
    for (const { next_m, stock_m, lo80_m, hi80_m } of cells) {
      expect(next_m).toHaveLength(19);
      expect(next_m).toEqual(next_m.toSorted((a, b) => a - b));
      expect(lo80_m).toBeLessThan(stock_m);
      expect(hi80_m).toBeGreaterThan(stock_m);
    }
    expect(leftOut.map(({ shotId }) => shotId).sort()).toEqual(['s2', 's3', 's4']);
  });

  test('a bare date means all of that day, an instant itself', () => {
    expect(json(small, '--as-of', '2026-05-02').asOf).toBe('2026-05-02T23:59:59.999Z');
    expect(json(small, '--as-of=2026-05-02T10:00:00Z').asOf).toBe('2026-05-02T10:00:00Z');
    const shots = (asOf: string): number =>
      json(small, '--as-of', asOf).players[0].cells.reduce((sum, cell) => sum + cell.shots, 0);
    expect([shots('2026-05-01'), shots('2026-05-02')]).toEqual([0, 1]);
  });

  test('leaves out a shot that the same file says was deleted later', () => {
    const file = smallFile();
    file.deleted.push({ id: 's1', of: 'shot', at: '2026-05-30T00:00:00Z' });
    expect(json(saved(file)).players[0].cells.map(({ shots }) => shots)).not.toContain(1);
  });

  test('gives every golfer of a team file, as of the newest export', () => {
    const other = smallFile();
    Object.assign(other.player, { id: 'p2', name: 'Moss' });
    other.exportedAt = '2026-06-02T18:00:00Z';
    const report = json(saved({ format: 'carrybook-team', version: 1, logbooks: [other, smallFile()] }));
    expect(report.asOf).toBe('2026-06-02T18:00:00Z');
    expect(report.players.map(({ player }) => player)).toEqual(['p2', 'p1']);
  });

  test('a broken logbook in a team file is named on stderr, and nothing is printed', () => {
    const broken = smallFile();
    broken.player.name = 'Moss';
    broken.shots[0].carry.m = -3;
    const { code, out, err } = run(
      saved({ format: 'carrybook-team', version: 1, logbooks: [smallFile(), broken] }),
      '--json',
    );
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(
      /logbook 1 \(Moss\) is refused:\nlogbooks\[1\]\.shots\[0\]\.carry\.m: expected a number from 0 to 600, found -3\n$/,
    );
  });

  test.each(['not JSON', 'truncated', 'newer version', 'wrong type deep inside', 'a key that reaches the prototype'])(
    'a broken file is refused with the place, and nothing is printed: %s',
    (name) => {
      const broken = brokenFiles.find((file) => file.name === name);
      const { code, out, err } = run(saved(broken?.text), '--json');
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toContain(`${broken?.path}: expected`);
    },
  );

  test.each([
    ['no file', [], /expected one file, found 0\nUsage: /],
    ['two files', [small, small], /expected one file, found 2\nUsage: /],
    ['an unknown option', [small, '--csv'], /--csv[\s\S]*\nUsage: /],
    [
      'a day that does not exist',
      [small, '--as-of', '2026-02-30'],
      /--as-of: expected a day .* found 2026-02-30\nUsage: /,
    ],
    ['a file that is not there', [join(folder, 'none.json')], /none\.json cannot be read: /],
    ['a review file', [saved({ format: 'carrybook-review', playerId: 'p1' })], /is a review file/],
    ['a team of nobody', [saved({ format: 'carrybook-team', logbooks: [] })], /holds no logbook/],
  ] as const)('%s exits 2 with the reason on stderr', (_, args, reason) => {
    const { code, out, err } = run(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(reason);
  });
});
