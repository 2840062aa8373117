import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { readCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { inOrder } from '../../src/golf/shotOrder.ts';
import { nineHoles } from './invented.ts';
import { openPhone } from './phoneBrowser.ts';
import { answer, key, playShot, putt, question, savedLines } from './playShot.ts';
import { reportOf } from './reportOf.ts';
import { savedFile } from './savedFile.ts';
import { type Thumb, thumbOn } from './thumb.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Metres in a yard, exact. Source: International yard and pound agreement, 1959. */
const YARD = 0.9144;

/** The hole, and the shot on it, in the middle of which the browser is killed; both count from 0. */
const KILLED = { hole: 4, shot: 1 };

function isServed(url: string): Promise<boolean> {
  return fetch(url).then(
    (response) => response.ok,
    () => false,
  );
}

async function freePort(): Promise<number> {
  const probe = createServer();
  await new Promise<void>((resolve) => probe.listen(0, resolve));
  const { port } = probe.address() as AddressInfo;
  await new Promise((resolve) => probe.close(resolve));
  return port;
}

/** A server of the built app that can be taken away. */
async function serveBuilt(): Promise<{ url: string; stop: () => Promise<void> }> {
  const port = await freePort();
  const folder = process.env.CARRYBOOK_BUILT ?? 'dist';
  const vite = ['node_modules/vite/bin/vite.js', 'preview', '--outDir', folder, '--port', String(port), '--strictPort'];
  const server = spawn(process.execPath, vite, { cwd: root, stdio: 'ignore' });
  const gone = new Promise<void>((resolve) => server.once('exit', () => resolve()));
  const url = `http://localhost:${port}/`;
  for (let tries = 0; ; tries += 1) {
    if (await isServed(url)) break;
    if (tries > 200 || server.exitCode !== null) throw new Error(`no server on ${url}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return {
    url,
    stop: async () => {
      server.kill('SIGKILL');
      await gone;
    },
  };
}

/** The numbers of the printed card as the page shows them. */
async function shownNumbers(page: Page) {
  await page.locator('[data-metres]').first().waitFor();
  return page.locator('[data-metres]').evaluateAll((elements) =>
    elements.map((element) => {
      const { club, spec, swing, metres, lowMetres, highMetres, shots } = (element as HTMLElement).dataset;
      return {
        cell: `${club} ${spec} ${swing}`,
        metres: [metres, lowMetres, highMetres].map(Number),
        shots: Number(shots),
      };
    }),
  );
}

/** Plays a hole from its tee, or on from where it stands, and goes to the next. */
async function playHole(page: Page, thumb: Thumb, index: number, taps: number[], from = 0): Promise<void> {
  const { shots, firstPutt, putts } = nineHoles[index];
  for (let n = from; n < shots.length; n += 1) {
    const before = thumb.taps();
    await playShot(page, thumb, shots[n], n + 1);
    taps.push(thumb.taps() - before);
  }
  await putt(page, thumb, firstPutt, putts);
  await expect(page.getByText(`Hole ${index + 1}: ${shots.length + putts} strokes`)).toBeVisible();
}

// A trace holds on to things of the browser that is killed.
test.use({ trace: 'off' });

test('a new golfer plays nine holes with no network, is killed in the middle of them, and loses nothing', async () => {
  test.setTimeout(240_000);
  const profile = mkdtempSync(join(tmpdir(), 'carrybook-round-'));
  const server = await serveBuilt();
  let phone = await openPhone(profile);
  const requests: string[] = [];
  const complaints: string[] = [];
  const listen = (page: Page) => {
    page.on('request', (request) => requests.push(request.url()));
    page.on('pageerror', (error) => complaints.push(error.message));
  };
  const taps: number[] = [];
  let tapsInAll = 0;
  try {
    listen(phone.page);
    await phone.page.goto(server.url);
    await key(phone.page, 'Start from typical lofts').waitFor();
    const isKept = () => phone.page.evaluate(() => navigator.serviceWorker.controller?.state === 'activated');
    await expect.poll(isKept, { message: 'the app is kept for offline use', timeout: 30_000 }).toBe(true);
    await server.stop();
    expect(await isServed(server.url)).toBe(false);

    // From here on there is no server: everything below happens with no network.
    let { page } = phone;
    await page.reload();
    await key(page, 'Start from typical lofts').click();
    for (const [club, carry] of [
      ['driver', '225'],
      ['7 iron', '148'],
      ['50°', '104'],
    ]) {
      await page.getByRole('textbox', { name: new RegExp(`^${club}`, 'i') }).fill(carry);
    }
    await key(page, /^Keep|^Save/).click();
    await expect(page).toHaveURL(/#\/bag$/);
    await page.getByRole('link', { name: 'Round', exact: true }).click();
    await expect(page.getByText('13 clubs in the bag')).toBeVisible();
    await page.getByLabel('Course').fill('Larch Hill (invented)');
    await page.getByLabel('Tees').fill('white');
    await page.getByRole('radio', { name: '9', exact: true }).check();
    await key(page, 'Start the round').click();

    let thumb = thumbOn(page);
    for (let hole = 0; hole < KILLED.hole; hole += 1) {
      await playHole(page, thumb, hole, taps);
      await thumb.tap(key(page, `Hole ${hole + 2}`));
    }
    for (let n = 0; n < KILLED.shot; n += 1) await playShot(page, thumb, nineHoles[KILLED.hole].shots[n], n + 1);
    await expect(question(page)).toContainText('How far is the flag');
    await thumb.tap(key(page, '150'));
    await key(page, '155').waitFor();
    // The half-typed number is stored with no sign on the screen; half a second is ample.
    await page.waitForTimeout(500);
    tapsInAll += thumb.taps();
    await phone.kill();

    phone = await openPhone(profile);
    ({ page } = phone);
    listen(page);
    await page.goto(server.url);
    await expect(page.getByRole('heading', { level: 1 })).toContainText(`Hole ${KILLED.hole + 1}`);
    await expect(question(page), 'the same slot').toContainText('How far is the flag');
    await expect(key(page, '155'), 'the same digits').toBeVisible();
    await expect(savedLines(page)).toHaveCount(KILLED.shot);

    thumb = thumbOn(page);
    await answer(page, thumb, nineHoles[KILLED.hole].shots[KILLED.shot]);
    await playHole(page, thumb, KILLED.hole, taps, KILLED.shot);
    for (let hole = KILLED.hole + 1; hole < nineHoles.length; hole += 1) {
      await thumb.tap(key(page, `Hole ${hole + 1}`));
      await playHole(page, thumb, hole, taps);
    }
    await thumb.tap(key(page, 'Round over'));
    tapsInAll += thumb.taps();

    const shots = nineHoles.flatMap((hole) => hole.shots);
    const putts = nineHoles.reduce((sum, hole) => sum + hole.putts, 0);
    expect(shots.length).toBe(38);
    await expect(page.getByText('Round over')).toBeVisible();
    const total = (id: string) => page.locator(`[data-total="${id}"]`);
    await expect(total('strokes')).toHaveText(String(shots.length + putts));
    await expect(total('shots')).toHaveText(String(shots.length));
    await expect(total('putts')).toHaveText(String(putts));
    await expect(total('not-logged')).toHaveText('0');

    const file = await savedFile(page, mkdtempSync(join(profile, 'saved-')));
    const read = readCarrybookFile(readFileSync(file, 'utf8'));
    if (read.kind !== 'read') throw new Error(`the backup was refused: ${JSON.stringify(read)}`);
    const { clubs, shots: stored } = read.value;
    const named = new Map(clubs.map((club) => [club.id, club.name]));
    expect(
      inOrder(stored).map((shot) => ({
        hole: shot.hole,
        club: named.get(shot.clubId ?? ''),
        strike: shot.strike,
        flag: shot.flag_m === null ? undefined : Math.round(shot.flag_m / YARD),
        rest: shot.restLie,
      })),
    ).toEqual(
      nineHoles.flatMap(({ shots }, index) =>
        shots.map(({ club, strike, flag, rest }) => ({ hole: index + 1, club, strike, flag, rest })),
      ),
    );

    await page.getByRole('link', { name: 'Yardages', exact: true }).click();
    const shown = await shownNumbers(page);
    const reported = new Map(reportOf(file).map((cell) => [`${cell.clubId} ${cell.specId} ${cell.swing}`, cell]));
    expect(shown.length).toBeGreaterThanOrEqual(12);
    for (const { cell, metres, shots } of shown) {
      const of = reported.get(cell);
      if (!of) throw new Error(`${cell} is shown but not reported`);
      expect(shots, cell).toBe(of.shots);
      [of.stock_m, of.lo80_m, of.hi80_m].forEach((figure, i) => {
        expect(Math.abs(metres[i] - figure) / YARD, cell).toBeLessThanOrEqual(0.1);
      });
    }
    expect(shown.reduce((sum, { shots }) => sum + shots, 0)).toBeGreaterThan(5);
    expect(requests.filter((url) => !url.startsWith(server.url) && !url.startsWith(`blob:${server.url}`))).toEqual([]);
    expect(complaints).toEqual([]);
  } finally {
    await phone.kill();
    await server.stop();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
  const sorted = taps.toSorted((one, other) => one - other);
  const median = sorted[Math.floor(sorted.length / 2)];
  console.log(`nine holes: ${tapsInAll} taps in all; a shot: median ${median}, most ${sorted.at(-1)}`);
  expect(median).toBeLessThanOrEqual(5);
  expect(sorted.at(-1)).toBeLessThanOrEqual(9);
});
