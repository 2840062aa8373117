import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import * as z from 'zod/mini';
import { type Shot, shotSchema } from '../../src/golf/shot.ts';
import { inOrder } from '../../src/golf/shotOrder.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { openPhone } from './phoneBrowser.ts';
import { storedShots } from './storedShots.ts';
import { type Thumb, thumbOn } from './thumb.ts';

/** How often the browser is killed. The issue of this journey asks for 20; a longer proof sets its own count. */
const KILLS = Number(process.env.CARRYBOOK_KILLS ?? 20);

/** Earliest and latest moment of a kill after the page can be used, in milliseconds: one to three shots' time. */
const EARLIEST_MS = 50;
const LATEST_MS = 2500;

/** The shot to log as number `n` from 1, so that each stored shot can be told for the one that was meant. */
const clubs = ['5 iron', '6 iron', '7 iron', '8 iron', '9 iron'] as const;
const strikes = ['solid', 'thin', 'fat', 'heel', 'toe', 'solid', 'thin'] as const;
const clubOf = (n: number) => clubs[n % clubs.length];
const strikeOf = (n: number) => strikes[n % strikes.length];

const key = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).first();
const question = (page: Page) => page.locator('section[aria-label] h2');
const savedLines = (page: Page) => page.locator('li[data-shot]:not(:has(em))');

/** Latest moment of a kill after the tap that logs, in milliseconds: before, during and after the writing. */
const WRITING_MS = 60;

/** Answers what the page asks until shot `n` stands in the list as saved. A shot half entered goes on where it was. */
async function logShot(page: Page, thumb: Thumb, n: number): Promise<void> {
  const isThere = async () => (await savedLines(page).count()) >= n;
  for (let step = 0; step < 12 && !(await isThere()); step += 1) {
    const asked = (await question(page).textContent()) ?? '';
    if (asked.startsWith('How far is the flag')) await thumb.tap(key(page, 'Skip'));
    else if (asked.startsWith('Which club')) await thumb.tap(key(page, clubOf(n)));
    else if (asked.startsWith('How was it struck')) await thumb.tap(key(page, strikeOf(n)));
    else if (asked.startsWith('Where is the ball now')) {
      await thumb.tap(key(page, 'fairway'));
      await expect(savedLines(page)).toHaveCount(n);
    } else throw new Error(`the page asks “${asked}”`);
  }
  await expect(savedLines(page)).toHaveCount(n);
}

/** What the page itself tells, since polling it comes too late. */
interface Told {
  /** So many shots are shown as saved. */
  readonly onSaved: (count: number) => void;
  /** The tap that logs a shot has just landed. */
  readonly onLog: () => void;
}

async function listen(page: Page, told: Told): Promise<void> {
  await page.exposeFunction('tellSaved', told.onSaved);
  await page.exposeFunction('tellLog', told.onLog);
  await page.addInitScript(() => {
    const { tellSaved, tellLog } = globalThis as unknown as { tellSaved: (count: number) => void; tellLog: () => void };
    const tell = () => {
      const count = document.querySelectorAll('li[data-shot]:not(:has(em))').length;
      if (count > 0) tellSaved(count);
    };
    new MutationObserver(tell).observe(document, { subtree: true, childList: true, characterData: true });
    const hear = (event: Event) => {
      if ((event.target as Element).closest('button')?.textContent === 'fairway') tellLog();
    };
    addEventListener('click', hear, { capture: true });
  });
}

// A trace holds on to things of the browser that is killed.
test.use({ trace: 'off' });

test(`no acknowledged shot is lost in ${KILLS} kills at random moments`, async ({ baseURL }) => {
  test.setTimeout(30_000 + KILLS * 6_000);
  const url = baseURL ?? 'no base';
  const profile = mkdtempSync(join(tmpdir(), 'carrybook-kill-'));
  const random = randomNumbers('kills');
  let phone = await openPhone(profile);
  let clubIds = new Map<string, string>();
  let acknowledged = 0;
  let midShot = 0;
  let onLog = () => {};
  const told: Told = {
    onSaved: (count) => {
      acknowledged = Math.max(acknowledged, count);
    },
    onLog: () => onLog(),
  };
  try {
    await listen(phone.page, told);
    await phone.page.goto(url);
    await key(phone.page, 'Start from typical lofts').click();
    await phone.page.getByRole('link', { name: 'Round', exact: true }).click();
    await phone.page.getByRole('radio', { name: 'Casual' }).check();
    await key(phone.page, 'Start the round').click();
    await key(phone.page, 'driver').waitFor();
    clubIds = new Map(await clubsByName(phone.page));

    for (let kill = 1; kill <= KILLS; kill += 1) {
      const { page } = phone;
      const thumb = thumbOn(page);
      let isKilled = false;
      let killed = Promise.resolve();
      const killAfter = (wait_ms: number) =>
        new Promise<void>((resolve) => {
          setTimeout(() => {
            isKilled = true;
            void phone.kill().then(resolve);
          }, wait_ms);
        });
      // Every other kill aims at the writing itself; the rest fall anywhere.
      const aimsAtWriting = kill % 2 === 0;
      const wait_ms = aimsAtWriting ? random.uniform() * WRITING_MS : random.between(EARLIEST_MS, LATEST_MS);
      if (!aimsAtWriting) killed = killAfter(wait_ms);
      onLog = () => {
        if (aimsAtWriting) killed = killAfter(wait_ms);
        onLog = () => {};
      };
      try {
        while (!isKilled) {
          await logShot(page, thumb, acknowledged + 1);
        }
      } catch (error) {
        // Whatever the page was doing when it was killed fails; anything else is a fault.
        if (!isKilled) throw error;
      }
      await killed;

      phone = await openPhone(profile);
      const before = acknowledged;
      await listen(phone.page, told);
      await phone.page.goto(url);
      await question(phone.page).waitFor();
      const stored = (await storedShots(phone.page)).map((shot) => z.parse(shotSchema, shot));
      const inTurn: Shot[] = inOrder(stored);
      expect(inTurn.length, `kill ${kill}: shots stored, ${before} acknowledged`).toBeGreaterThanOrEqual(before);
      expect(inTurn.length, `kill ${kill}: nothing stored that was not logged`).toBeLessThanOrEqual(before + 1);
      inTurn.forEach((shot, index) => {
        const n = index + 1;
        const found = { number: shot.number, clubId: shot.clubId, strike: shot.strike, restLie: shot.restLie };
        const meant = { number: n, clubId: clubIds.get(clubOf(n)), strike: strikeOf(n), restLie: 'fairway' };
        expect(found, `kill ${kill}: shot ${n} is whole`).toEqual(meant);
      });
      await expect(savedLines(phone.page), `kill ${kill}: the page shows what is stored`).toHaveCount(inTurn.length);
      if (!(await question(phone.page).textContent())?.startsWith('How far is the flag')) midShot += 1;
      acknowledged = inTurn.length;
    }
  } finally {
    await phone.kill();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
  console.log(`${KILLS} kills: ${acknowledged} shots logged, none lost; ${midShot} times in the middle of a shot`);
  expect(acknowledged).toBeGreaterThan(KILLS / 2);
});

/** The names of the clubs in the phone's store and their ids. */
function clubsByName(page: Page): Promise<[string, string][]> {
  return page.evaluate(
    () =>
      new Promise<[string, string][]>((resolve, reject) => {
        const opening = indexedDB.open('carrybook');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const reading = db.transaction('clubs').objectStore('clubs').getAll();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            db.close();
            resolve(reading.result.map((club: { name: string; id: string }) => [club.name, club.id]));
          };
        };
      }),
  );
}
