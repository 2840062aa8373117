import { expect, type Page, test } from '@playwright/test';
import type { Shot } from '../../src/golf/shot.ts';
import type { PlayedHole } from './invented.ts';
import { eighteenHoles, PARS, STROKES } from './inventedEighteen.ts';
import { key, type PlayedShot, playShot, putt, question, savedLines } from './playShot.ts';
import { storedShots } from './storedShots.ts';
import { type Thumb, thumbOn } from './thumb.ts';

test.use({ isMobile: true });

/**
 * Seconds of the keystroke-level model: K one key for an average typist who is no secretary, P pointing with a mouse,
 * H a hand from keyboard to pointer, M making up one's mind. Source: Card, Moran and Newell, "The keystroke-level model
 * for user performance time with interactive systems", Communications of the ACM 23 (1980), values from memory. A thumb
 * on glass was not in the study: a tap is counted as P and K. One M a shot for what is to be said, and H not at all.
 */
const SECONDS = { K: 0.28, P: 1.1, M: 1.35 } as const;

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
const spread = (values: readonly number[]) => `median ${median(values)}, worst ${Math.max(...values)}`;

/** The bar with the keys of the shot, and the key on it that goes on. */
const onwards = (page: Page, name: string) =>
  page.getByRole('group', { name: 'This shot' }).getByRole('button', { name, exact: true });

async function startRound(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: 'Casual' }).check();
  await page.getByLabel('Course').fill('Larch Hill (invented)');
  await page.getByRole('button', { name: 'Start the round' }).click();
  await key(page, 'driver').waitFor();
}

/** Sets the pars of all holes at once, one tap each. */
async function setPars(page: Page): Promise<void> {
  await page.getByRole('link', { name: /^Hole 1/ }).click();
  await page.getByRole('link', { name: 'All holes' }).click();
  await page.getByText('Par of each hole').click();
  for (const [index, par] of PARS.entries()) {
    const row = page.getByRole('group', { name: `Hole ${index + 1}`, exact: true });
    await row.getByRole('button', { name: `par ${par}` }).click();
  }
  await expect(page.locator('a[data-hole="18"]')).toContainText('par 5');
  await page.getByRole('button', { name: 'Go on playing' }).click();
  await key(page, 'driver').waitFor();
}

/** The strokes that the page says a hole came to. */
async function strokesOf(page: Page, number: number): Promise<number> {
  const over = page.getByText(new RegExp(`^Hole ${number}: `));
  await over.waitFor();
  return Number(/: (\d+)/.exec((await over.textContent()) ?? '')?.[1]);
}

/** What is typed for a club, a strike, a swing, a rest: as few letters as find the key. */
const TYPED: Readonly<Record<string, string>> = {
  driver: 'dr',
  '3 wood': '3w',
  '4 hybrid': '4h',
  '5 iron': '5i',
  '6 iron': '6i',
  '7 iron': '7i',
  '8 iron': '8i',
  '9 iron': '9i',
  PW: 'pw',
  '50°': '50',
  '54°': '54',
  '58°': '58',
  solid: 's',
  thin: 'th',
  fat: 'fa',
  heel: 'h',
  toe: 'to',
  '9:00': '90',
  '10:30': '10',
  full: 'fu',
  green: 'g',
  fairway: 'f',
  'light rough': 'lr',
  'heavy rough': 'hr',
  lost: 'los',
};

/** A keyboard that counts its keys. */
function keyboardOn(page: Page) {
  let keys = 0;
  return {
    keys: () => keys,
    type: async (text: string) => {
      await page.keyboard.type(text);
      keys += text.length;
    },
    press: async (name: string) => {
      await page.keyboard.press(name);
      keys += 1;
    },
  };
}
type Keyboard = ReturnType<typeof keyboardOn>;

/** Types what finds a key; Enter takes the first of several that begin so. */
async function typeKey(keyboard: Keyboard, face: string): Promise<void> {
  await keyboard.type(TYPED[face] ?? face);
  if (face === 'fairway' || face === 'green') await keyboard.press('Enter');
}

async function answerByKeys(page: Page, keyboard: Keyboard, shot: PlayedShot): Promise<void> {
  const asked = (await question(page).textContent()) ?? '';
  if (asked.startsWith('How far is the flag')) {
    if (shot.chip) return keyboard.type('ch');
    if (shot.flag === undefined) return keyboard.type('sk');
    await keyboard.type(String(shot.flag));
    if (shot.flag < 100) await keyboard.press('Enter');
    return;
  }
  if (asked.startsWith('Which club')) return typeKey(keyboard, shot.club);
  if (asked.startsWith('How far back')) return typeKey(keyboard, shot.swing ?? 'full');
  if (asked.startsWith('How was it struck')) return typeKey(keyboard, shot.strike);
  if (asked.startsWith('Where did it pitch')) {
    await expect(page.locator('[data-sheet]')).toBeFocused();
    const [long, right] = shot.pitch ?? [0, 0];
    for (const [steps, arrow] of [
      [long, long > 0 ? 'ArrowUp' : 'ArrowDown'],
      [right, right > 0 ? 'ArrowRight' : 'ArrowLeft'],
    ] as const) {
      if (Math.abs(steps) > 1) await keyboard.type(String(Math.abs(steps)));
      if (steps !== 0) await keyboard.press(arrow);
    }
    return keyboard.press('Enter');
  }
  if (asked.startsWith('Where is the ball now')) return typeKey(keyboard, shot.rest);
  throw new Error(`the page asks “${asked}”`);
}

async function enterShot(page: Page, keyboard: Keyboard, shot: PlayedShot, count: number): Promise<void> {
  for (let step = 0; step < 12; step += 1) {
    const lines = await page.locator('li[data-shot]').count();
    if (lines >= count) break;
    const before = await question(page).textContent();
    await answerByKeys(page, keyboard, shot);
    // What is typed stands behind the question for a moment, as `f_`.
    await page.waitForFunction(
      ([before, lines]) =>
        document.querySelector('section[aria-label] h2')?.textContent?.replace(/ \w+_$/, '') !== before ||
        document.querySelectorAll('li[data-shot]').length !== lines,
      [before, lines] as const,
    );
  }
  await savedLines(page)
    .nth(count - 1)
    .waitFor();
}

async function enterPutts(page: Page, keyboard: Keyboard, { firstPutt, putts }: PlayedHole): Promise<void> {
  await question(page).filter({ hasText: 'How long is the first putt' }).waitFor();
  await keyboard.type(String(firstPutt));
  if (firstPutt !== null && firstPutt < 10) await keyboard.press('Enter');
  await question(page).filter({ hasText: 'Did it go in' }).waitFor();
  if (putts === 1) await keyboard.type('h');
  else {
    await keyboard.type(String(putts));
    await keyboard.press('Enter');
  }
}

/** The shots of the latest round, by hole and in order, without what tells one entry from another. */
function bare(shots: readonly Shot[], roundId: string) {
  return shots
    .filter((shot) => shot.roundId === roundId)
    .sort((a, b) => a.hole - b.hole || a.number - b.number)
    .map(({ id: _id, roundId: _round, at: _at, changedAt: _changed, device: _device, ...slots }) => slots);
}

async function playLive(page: Page, thumb: Thumb): Promise<{ taps: number[]; putts: number[]; strokes: number[] }> {
  const [taps, putts, strokes]: [number[], number[], number[]] = [[], [], []];
  for (const [index, hole] of eighteenHoles.entries()) {
    for (const [number, shot] of hole.shots.entries()) {
      const before = thumb.taps();
      await playShot(page, thumb, shot, number + 1);
      taps.push(thumb.taps() - before);
    }
    const before = thumb.taps();
    await putt(page, thumb, hole.firstPutt, hole.putts);
    putts.push(thumb.taps() - before);
    strokes.push(await strokesOf(page, index + 1));
    await thumb.tap(onwards(page, index === 17 ? 'Round over' : `Hole ${index + 2}`));
  }
  return { taps, putts, strokes };
}

async function enterAfterwards(page: Page, keyboard: Keyboard): Promise<{ keys: number[]; strokes: number[] }> {
  const [keys, strokes]: [number[], number[]] = [[], []];
  for (const [index, hole] of eighteenHoles.entries()) {
    for (const [number, shot] of hole.shots.entries()) {
      const before = keyboard.keys();
      await enterShot(page, keyboard, shot, number + 1);
      keys.push(keyboard.keys() - before);
    }
    await enterPutts(page, keyboard, hole);
    strokes.push(await strokesOf(page, index + 1));
    // The key is there once the last putt is stored.
    await onwards(page, index === 17 ? 'Round over' : `Hole ${index + 2}`).waitFor();
    await keyboard.type(index === 17 ? 'rou' : 'ho');
  }
  return { keys, strokes };
}

test('a full eighteen live by thumb and the same afterwards by keyboard are stored alike, within the budget of taps', async ({
  page,
}) => {
  test.setTimeout(180_000);
  const began = Date.now();
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  await page.waitForURL(/#\/bag/);
  await startRound(page);
  await setPars(page);
  const live = await playLive(page, thumbOn(page));
  await expect(page.locator('[data-total="strokes"]')).toHaveText(String(STROKES.reduce((sum, n) => sum + n, 0)));
  const lived = Date.now();
  const played = (await storedShots(page)) as Shot[];
  const [first] = played.map((shot) => shot.roundId);

  await page.setViewportSize({ width: 1280, height: 800 });
  await startRound(page);
  const typed = await enterAfterwards(page, keyboardOn(page));
  await expect(page.locator('[data-total="strokes"]')).toHaveText(String(STROKES.reduce((sum, n) => sum + n, 0)));
  const both = (await storedShots(page)) as Shot[];
  const second = both.map((shot) => shot.roundId).find((id) => id !== first);

  const seconds = (values: readonly number[], each: number) =>
    median(values.map((n) => SECONDS.M + n * each)).toFixed(1);
  console.log(
    `eighteen live: ${live.taps.length} shots, taps a shot ${spread(live.taps)} (${live.taps.join(' ')}); putts a hole ${spread(
      live.putts,
    )}; keystroke-level time a shot, median ${seconds(live.taps, SECONDS.P + SECONDS.K)} s. Afterwards: keys a shot ${spread(
      typed.keys,
    )}, keystroke-level time a shot, median ${seconds(typed.keys, SECONDS.K)} s. Took ${Math.round((lived - began) / 1000)} s and ${Math.round(
      (Date.now() - lived) / 1000,
    )} s.`,
  );
  expect(live.taps.length).toBeGreaterThanOrEqual(38);
  expect(live.taps.length).toBeLessThanOrEqual(45);
  expect(live.strokes).toEqual(STROKES);
  expect(typed.strokes).toEqual(STROKES);
  expect(median(live.taps)).toBeLessThanOrEqual(5);
  expect(Math.max(...live.taps)).toBeLessThanOrEqual(9);
  const one = bare(both, first ?? '');
  expect(one).toHaveLength(live.taps.length);
  expect(bare(both, second ?? '')).toEqual(one);
});
