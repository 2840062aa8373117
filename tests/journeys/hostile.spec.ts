import { expect, type Page, test } from '@playwright/test';
import { smallFile } from '../fixtures/smallFile.ts';
import { openDemo } from './openDemo.ts';
import { watchRequests } from './ownRequests.ts';

/** Texts that would run, or would become elements, on a page that takes text for markup. Each fits a name of 60 characters. */
const corpus = [
  '<img planted src=x onerror=planted()>',
  '"><svg planted onload=planted()>',
  '<script planted>planted()</script>',
  '<iframe planted srcdoc="<script>planted()</script>">',
  "'><a planted href=javascript:planted()>x</a>",
  '<b planted style=position:fixed onclick=planted()>x</b>',
  '</title><body planted onload=planted()>',
  '<meta planted http-equiv=refresh content=0;url=//a.test>',
  '<link planted rel=stylesheet href=//a.test/a.css>',
  '<base planted href=//a.test/>',
  '<object planted data=//a.test/a></object>',
  '<math planted><mi xlink:href=javascript:planted()>x',
  '<details planted open ontoggle=planted()>',
  '<form planted action=//a.test><input autofocus>',
  '&lt;img planted src=x onerror=planted()&gt;',
  'javascript:planted()',
  '{{constructor.constructor("planted()")()}}',
  '<style planted>*{background:url(//a.test/a)}</style>',
  '\u202e<img planted src=x onerror=planted()>',
  '<template planted><img src=x onerror=planted()></template>',
];

const at = (n: number): string => corpus[n % corpus.length];

/** An invented golfer's backup with a text of the corpus in every field that holds text, under keys nobody knows too. */
function hostileBackup(): string {
  const file = smallFile();
  let n = 0;
  const next = () => at(n++);
  file.player.name = next();
  const clubs = corpus.map((text, i) => ({
    id: `h${i}`,
    kind: i % 3 === 0 ? 'wedge' : 'iron',
    name: text,
    specPeriods: [
      { id: `h${i}a`, from: '2026-03-01', loft_deg: 20 + i, shaft: at(i + 1), head: at(i + 2), note: at(i + 3) },
    ],
    [next()]: next(),
  }));
  const rounds = corpus.map((text, i) => ({
    id: `hr${i}`,
    date: `2026-04-${String(i + 1).padStart(2, '0')}`,
    play: 'casual',
    course: text,
    tees: at(i + 5),
    bag: clubs.slice(0, 14).map(({ id }) => id),
    holes: [{ number: 1, par: 4, [text]: text }],
  }));
  const shots = corpus.map((text, i) => ({
    id: `hs${i}`,
    roundId: 'hr0',
    hole: 1,
    number: i + 1,
    clubId: `h${i % 14}`,
    specId: `h${i % 14}a`,
    lie: 'fairway',
    strike: 'solid',
    carry: { m: 100 + i, by: 'laser' },
    note: `${text} ${at(i + 7)}`,
  }));
  const reviews = corpus.map((text, i) => ({
    id: `hv${i}`,
    by: text,
    at: '2026-05-10T18:00:00Z',
    about: { clubId: `h${i}`, swing: 'full', roundId: null },
    note: `${at(i + 4)}\n${at(i + 9)}`,
    task: { balls: 20, due: null },
  }));
  return JSON.stringify({
    ...file,
    clubs: [...file.clubs, ...clubs],
    rounds: [...file.rounds, ...rounds],
    shots: [...file.shots, ...shots],
    reviews,
    [at(3)]: at(4),
  });
}

/** Every page on which texts of the logbook stand. */
const addresses = [
  'round',
  'round/rounds',
  'round/bin',
  'round/card/hr0',
  'round/card/hr7',
  'round/hole/hr0/1',
  'round/shot/hr0/hs0',
  'round/shot/hr0/hs7',
  'round/move/hr0/hs3',
  'yardages',
  'yardages/h0/full',
  'yardages/h2/full',
  'yardages/search',
  'yardages/card',
  'yardages/card/shots',
  'bag',
  'bag/anchors',
  ...corpus.map((_, i) => `bag/club/h${i}`),
  'more',
  'more/restore',
  'open',
];

interface Watching {
  planted: number;
  violations: string[];
}

/** Counts scripts that ran though they should not, and breaches of the policy, also those that a library tries and swallows. */
async function watchPolicy(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const watching: Watching = { planted: 0, violations: [] };
    Object.assign(globalThis, {
      watching,
      planted: () => {
        watching.planted += 1;
      },
    });
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample, sourceFile, lineNumber }) => {
      watching.violations.push(`${violatedDirective} ${blockedURI} ${sample} ${sourceFile}:${lineNumber}`);
    });
  });
}

const watched = (page: Page): Promise<Watching> =>
  page.evaluate(() => (globalThis as unknown as { watching: Watching }).watching);

/** What of a page came from markup in a text: elements with the corpus' mark, or such as the app never makes. */
function intruders(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const strange =
      'iframe,object,embed,base,form[action],template,style,math,meta[http-equiv=refresh],script:not([type=module][src])';
    const all = [...document.querySelectorAll(`[planted],${strange}`)].map((element) =>
      element.outerHTML.slice(0, 120),
    );
    for (const element of document.querySelectorAll('*')) {
      for (const { name, value } of element.attributes) {
        if (/^on/i.test(name) || (/^(href|src|action|xlink:href)$/.test(name) && /^\s*javascript:/i.test(value))) {
          all.push(`${element.tagName} ${name}=${value}`);
        }
      }
    }
    return all;
  });
}

async function expectUntouched(page: Page, where: string): Promise<void> {
  expect(await intruders(page), where).toEqual([]);
  const { planted, violations } = await watched(page);
  expect(planted, `${where}: a planted script ran`).toBe(0);
  expect(violations, where).toEqual([]);
}

/** The texts of the corpus that stand on the page, as text or in a field. */
function shownTexts(page: Page): Promise<string[]> {
  return page.evaluate((corpus) => {
    const fields = [...document.querySelectorAll('input,textarea,option')].map(
      (field) => (field as HTMLInputElement).value,
    );
    const all = [document.body.textContent, ...fields].join('\n');
    return corpus.filter((text) => all.includes(text));
  }, corpus);
}

test('texts that are markup stay texts on every page, and nothing is asked of anybody else', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(180_000);
  const requests = watchRequests(page.context(), baseURL ?? 'no base');
  await watchPolicy(page);
  await page.goto('./#/more/restore');
  const file = {
    name: `${corpus[0].replaceAll('/', '')}.json`,
    mimeType: 'application/json',
    buffer: Buffer.from(hostileBackup()),
  };
  await page.locator('#backup-file').setInputFiles(file);
  await page.getByRole('button', { name: /^Bring it back/ }).click();
  await page.getByRole('link', { name: 'To the yardages' }).or(page.locator('a[href="#/yardages"]').first()).click();
  await page.getByRole('heading', { name: 'Full swings' }).waitFor();
  const seen = new Set<string>();
  for (const address of addresses) {
    await page.evaluate((address) => {
      location.hash = `#/${address}`;
    }, address);
    await page.locator('main h1').first().waitFor();
    // Fetched places and live readings come a moment later.
    await page.waitForTimeout(150);
    await expectUntouched(page, address);
    for (const text of await shownTexts(page)) seen.add(text);
  }
  // Turned writing is taken out when it is read, so that text is never shown as it was.
  expect(corpus.filter((text) => !seen.has(text) && !text.startsWith('\u202e'))).toEqual([]);
  expect(requests.foreign()).toEqual([]);
  expect(requests.complaints).toEqual([]);
});

test('a refused file of such texts is told without running one', async ({ page }) => {
  await watchPolicy(page);
  await page.goto('./#/open');
  for (const text of corpus) {
    const broken = JSON.stringify({
      format: 'carrybook',
      player: { id: text, [text]: 1 },
      clubs: [{ id: 'c', kind: text }],
    });
    const buffer = Buffer.from(broken);
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: `${text.replaceAll('/', '')}.json`, mimeType: 'application/json', buffer });
    await expect(page.getByRole('alert')).toContainText('Nothing else has changed.');
    await expectUntouched(page, text);
  }
});

test('what is typed stays text', async ({ page }) => {
  await watchPolicy(page);
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  for (const text of corpus.slice(0, 6)) {
    await page.getByLabel('Course').fill(text);
    await page.getByLabel('Course').blur();
    await expectUntouched(page, text);
  }
  await page.getByRole('radio', { name: 'Casual' }).check();
  await page.getByRole('button', { name: 'Start the round', exact: true }).first().click();
  await page.getByRole('button', { name: 'driver', exact: true }).first().waitFor();
  await page.getByRole('heading', { level: 1 }).click();
  await expectUntouched(page, 'the hole');
});

test('an inline script, a handler and an inline style written into the page are blocked by its policy', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ serviceWorkers: 'block', ...(baseURL ? { baseURL } : {}) });
  const page = await context.newPage();
  await watchPolicy(page);
  const injected =
    '<script>planted()</script><img src="./nowhere.png" onerror="planted()"><p id="painted" style="position:fixed">x</p>';
  await page.route('./', async (route) => {
    const response = await route.fetch();
    const body = (await response.text()).replace('<div id="app">', `${injected}<div id="app">`);
    const headers = { ...response.headers() };
    // Only what stands in the page itself counts here: a plain static host sends no header.
    delete headers['content-security-policy'];
    delete headers['content-length'];
    await route.fulfill({ status: 200, headers, body });
  });
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).waitFor();
  await expect.poll(async () => (await watched(page)).violations.length).toBeGreaterThanOrEqual(3);
  const { planted, violations } = await watched(page);
  expect(planted).toBe(0);
  expect(violations.some((text) => text.startsWith('script-src-elem inline'))).toBe(true);
  expect(violations.some((text) => text.startsWith('script-src-attr inline'))).toBe(true);
  expect(violations.some((text) => text.startsWith('style-src-attr inline'))).toBe(true);
  await expect(page.locator('#painted')).toHaveCSS('position', 'static');
  await context.close();
});

test('Trusted Types are in force, and nothing reaches another origin', async ({ page, baseURL }) => {
  const requests = watchRequests(page.context(), baseURL ?? 'no base');
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).waitFor();
  const outcomes = await page.evaluate(async () => {
    const tried: [string, () => unknown][] = [
      ['innerHTML', () => Object.assign(document.createElement('p'), { innerHTML: '<b>x</b>' })],
      ['insertAdjacentHTML', () => document.body.insertAdjacentHTML('beforeend', '<b>x</b>')],
      ['script text', () => Object.assign(document.createElement('script'), { text: '1' })],
      ['script address', () => Object.assign(document.createElement('script'), { src: './a.js' })],
      ['parser', () => new DOMParser().parseFromString('<b>x</b>', 'text/html')],
      ['worker', () => new Worker('./a.js')],
      [
        'a policy of another name',
        () =>
          (
            globalThis as never as { trustedTypes: { createPolicy: (name: string, rules: object) => void } }
          ).trustedTypes.createPolicy('other', {}),
      ],
    ];
    const outcomes: string[] = [];
    for (const [name, attempt] of tried) {
      try {
        attempt();
        outcomes.push(`${name}: went through`);
      } catch (error) {
        outcomes.push(`${name}: ${(error as Error).name}`);
      }
    }
    for (const [name, ask] of [
      ['fetch', () => fetch('https://elsewhere.test/')],
      [
        'beacon',
        async () => navigator.sendBeacon('https://elsewhere.test/', 'x') || Promise.reject(new TypeError('not sent')),
      ],
    ] as const) {
      outcomes.push(
        await ask().then(
          () => `${name}: went through`,
          (error: Error) => `${name}: ${error.name}`,
        ),
      );
    }
    return outcomes;
  });
  expect(outcomes.filter((text) => !text.startsWith('beacon'))).toEqual([
    'innerHTML: TypeError',
    'insertAdjacentHTML: TypeError',
    'script text: TypeError',
    'script address: TypeError',
    'parser: TypeError',
    'worker: TypeError',
    'a policy of another name: TypeError',
    'fetch: TypeError',
  ]);
  expect(requests.foreign()).toEqual([]);
});

test('no library tries what the policy forbids, on any main page of a whole season', async ({ page, baseURL }) => {
  const requests = watchRequests(page.context(), baseURL ?? 'no base');
  await watchPolicy(page);
  await openDemo(page);
  for (const address of [
    'round',
    'round/rounds',
    'yardages',
    'yardages/search',
    'yardages/card',
    'bag',
    'more',
    'more/restore',
    'open',
  ]) {
    await page.evaluate((address) => {
      location.hash = `#/${address}`;
    }, address);
    await page.locator('main h1').first().waitFor();
    await page.waitForTimeout(200);
    expect((await watched(page)).violations, address).toEqual([]);
  }
  expect(requests.complaints).toEqual([]);
  expect(requests.foreign()).toEqual([]);
  expect(requests.requests.length).toBeGreaterThan(5);
});
