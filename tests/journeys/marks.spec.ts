import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import geodesics from 'geographiclib-geodesic';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { askedOfReceiver } from './askedOfReceiver.ts';
import { axeFindings } from './axeFindings.ts';
import { inTheme } from './openDemo.ts';
import { storedShots } from './storedShots.ts';
import { thumbOn } from './thumb.ts';

test.use({ isMobile: true });

const { WGS84 } = geodesics.Geodesic;

/** Metres in a yard, exact. Source: International yard and pound agreement, 1959. */
const YARD = 0.9144;

interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/** The tee of an invented hole, somewhere in open country. */
const TEE: Place = { latitude: 51.2, longitude: -1.1 };

function going(from: Place, metres: number, bearing: number): Place {
  const { lat2, lon2 } = WGS84.Direct(from.latitude, from.longitude, bearing, metres);
  return { latitude: lat2 as number, longitude: lon2 as number };
}

/** An invented par 5 as it is walked: how far each ball went and which way, metres and degrees. */
const HOLE = [
  { club: 'driver', metres: 221, bearing: 12 },
  { club: '3 wood', metres: 187, bearing: 20 },
  { club: '54°', metres: 71, bearing: 355 },
] as const;

const action = (page: Page, name: string | RegExp) =>
  page.getByRole('group', { name: 'This shot' }).getByRole('button', { name, exact: true });
const club = (page: Page, name: string) => page.locator('[data-pad]').getByRole('button', { name, exact: true });
const saved = (page: Page) => page.locator('li[data-shot]:not(:has(em))');

async function start(page: Page, play: string, devices = true): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  await page.waitForURL(/#\/bag/);
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: play }).check();
  if (!devices) await page.getByRole('radio', { name: 'Not allowed here' }).check();
  await page.getByRole('button', { name: 'Start the round' }).click();
  await club(page, 'driver').waitFor();
}

/** Stands at a place: the phone gives a few fixes about it, each with the radius it reports. */
async function stand(
  context: BrowserContext,
  page: Page,
  place: Place,
  random: ReturnType<typeof randomNumbers>,
): Promise<void> {
  const radius = random.between(3, 8);
  const off = (from: Place, share: number): Place => {
    const sd = (radius / 2.448) * Math.sqrt(share);
    return going(going(from, random.normal(0, sd), 0), random.normal(0, sd), 90);
  };
  const shared = off(place, 0.7);
  for (let fix = 0; fix < 3; fix += 1) {
    await context.setGeolocation({ ...off(shared, 0.3), accuracy: radius });
    await page.waitForTimeout(120);
  }
  await expect(page.getByText(/Place known within/)).toBeVisible();
}

interface Stored {
  readonly number: number;
  readonly carry: { m: number } | null;
  readonly total: { m: number; error_m: number } | null;
  readonly marks: { ball: object | null; rest: object | null };
}

const inOrder = (shots: unknown[]) => (shots as Stored[]).sort((a, b) => a.number - b.number);

test('a hole walked with one tap at each ball gives each total within its ±, and no carry', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ ...TEE, accuracy: 5 });
  await start(page, 'Casual');
  const random = randomNumbers('walk');
  const thumb = thumbOn(page);
  let ball = TEE;
  for (const [n, shot] of HOLE.entries()) {
    const before = thumb.taps();
    await stand(context, page, ball, random);
    await thumb.tap(action(page, 'Ball here'));
    await expect(action(page, 'Pitch here')).toBeVisible();
    if (n > 0) await thumb.tap(page.locator('[data-slot="club"]'));
    await thumb.tap(club(page, shot.club));
    await thumb.tap(action(page, 'Log it'));
    await expect(saved(page)).toHaveCount(n + 1);
    // A tee shot by marks costs three taps at the most: ball, club, log. Any other asks for its lie first.
    expect(thumb.taps() - before).toBeLessThanOrEqual(n === 0 ? 3 : 4);
    ball = going(ball, shot.metres, shot.bearing);
  }
  await stand(context, page, ball, random);
  await thumb.tap(action(page, 'Ball here'));
  await expect.poll(async () => inOrder(await storedShots(page)).filter(({ total }) => total).length).toBe(3);
  const stored = inOrder(await storedShots(page));
  const within = stored.filter(({ total }, n) => {
    if (!total) throw new Error(`shot ${n + 1} has no total`);
    const shown = Math.ceil((1.2816 * total.error_m) / YARD);
    return Math.abs(total.m - HOLE[n].metres) / YARD <= shown;
  });
  expect(within.length).toBeGreaterThanOrEqual(2);
  expect(stored.map(({ carry }) => carry)).toEqual([null, null, null]);
});

test('ball and pitch give a carry with its ± at once in a casual round', async ({ page, context }) => {
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ ...TEE, accuracy: 4 });
  await start(page, 'Casual');
  const thumb = thumbOn(page);
  await thumb.tap(action(page, 'Ball here'));
  await thumb.tap(club(page, '7 iron'));
  await context.setGeolocation({ ...going(TEE, 137.16, 30), accuracy: 4 });
  await expect(page.getByText('Place known within 4 yd.')).toBeVisible();
  await page.waitForTimeout(200);
  await thumb.tap(action(page, 'Pitch here'));
  // 137.16 m are 150 yd; 1.2816 · √(4² + 4²)/2.448 m = 2.96 m = 3.24 yd, rounded up.
  await expect(page.getByText(/Carry 150 ± 4 yd/)).toBeVisible();
});

test('in a round by the Rules a mark is kept, and no distance is shown or worked out before it is over', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ ...TEE, accuracy: 4 });
  await start(page, 'By the Rules');
  const thumb = thumbOn(page);
  await thumb.tap(action(page, 'Ball here'));
  await thumb.tap(club(page, 'driver'));
  await thumb.tap(action(page, 'Log it'));
  await expect(saved(page)).toHaveCount(1);
  await context.setGeolocation({ ...going(TEE, 220, 30), accuracy: 4 });
  await page.waitForTimeout(300);
  await thumb.tap(action(page, 'Ball here'));
  await expect(page.getByText('Distances are worked out when the round is over.')).toBeVisible();
  await expect.poll(async () => inOrder(await storedShots(page))[0].marks.rest).not.toBeNull();
  expect(inOrder(await storedShots(page)).map(({ carry, total }) => [carry, total])).toEqual([[null, null]]);
  // 220 m are 241 yd; neither stands anywhere on the page.
  expect(await page.locator('main').textContent()).not.toMatch(/\b(2[34]\d|22\d) ?(yd|m)\b/);
});

test('with distance devices not allowed the receiver is not asked for anything, and there is no mark to tap', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ ...TEE, accuracy: 4 });
  const asked = await askedOfReceiver(page);
  await start(page, 'By the Rules', false);
  await club(page, 'driver').click();
  await action(page, 'Log it').click();
  await expect(saved(page)).toHaveCount(1);
  await page.waitForTimeout(500);
  await expect(action(page, 'Ball here')).toHaveCount(0);
  expect(await asked()).toBe(0);
});

test('nothing is asked before the first tap on a mark; a refusal says what to do instead', async ({ page }) => {
  const asked = await askedOfReceiver(page);
  await start(page, 'Casual');
  await page.waitForTimeout(300);
  expect(await asked()).toBe(0);
  await action(page, 'Ball here').click();
  await expect(page.getByText(/was told not to say where it is/)).toBeVisible();
  expect(await asked()).toBe(1);
  // The shot is logged all the same.
  await club(page, 'driver').click();
  await action(page, 'Log it').click();
  await expect(saved(page)).toHaveCount(1);
});

for (const theme of ['paper', 'night', 'glare']) {
  test(`axe finds nothing on the marks in ${theme}, with a good fix and a poor one`, async ({ page, context }) => {
    await inTheme(page, theme);
    await context.grantPermissions(['geolocation']);
    await context.setGeolocation({ ...TEE, accuracy: 4 });
    await start(page, 'Casual');
    await page.getByText(/Place known within/).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await action(page, 'More').click();
    await page.locator('[data-pad]').getByRole('button', { name: 'Rest here' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await context.setGeolocation({ ...going(TEE, 30, 0), accuracy: 25 });
    await page.getByText(/A poor fix: within 27/).waitFor();
    expect(await axeFindings(page)).toEqual([]);
  });
}
