/** The folders of src and their ranks. Imports go strictly down; folders on one rank never import each other. */
export const RANKS: Readonly<Record<string, number>> = {
  units: 0,
  statistics: 1,
  golf: 1,
  flight: 2,
  yardages: 2,
  book: 3,
  exchange: 3,
  logbook: 4,
  worker: 4,
  actions: 5,
  screens: 6,
};

/** Up to this rank the code is pure: no clock, no chance, no browser. */
export const LAST_PURE_RANK = 3;

/** The composition roots: the only loose files, and the folders each may reach. */
export const ROOTS: Readonly<Record<string, readonly string[]>> = {
  'report.ts': ['units', 'statistics', 'golf', 'flight', 'yardages', 'book', 'exchange'],
  'main.tsx': Object.keys(RANKS),
};

/** The packages a folder or root may import; `node:` stands for every module of Node itself. */
export const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  units: ['zod/mini'],
  statistics: [],
  golf: ['zod/mini', 'geographiclib-geodesic'],
  flight: [],
  yardages: [],
  book: [],
  exchange: ['zod/mini'],
  logbook: ['dexie', '@preact/signals', 'zod/mini'],
  worker: [],
  actions: ['@preact/signals', 'zod/mini'],
  screens: ['preact', 'preact/hooks', '@preact/signals', 'uplot', 'uplot/dist/uPlot.min.css'],
  'report.ts': ['node:'],
  'main.tsx': ['preact', '@preact/signals', 'workbox-window'],
};

/** Files of units/ that speak a golfer's units; SI inside, so only the edges import them. */
export const SPOKEN_UNITS = ['yards.ts', 'inches.ts', 'fahrenheit.ts', 'milesPerHour.ts'];
export const MAY_SPEAK = ['units', 'screens', 'report.ts'];

export const BANNED_NAMES = ['util', 'utils', 'helper', 'helpers', 'common', 'service', 'services', 'types', 'index'];

/** The one file that asks the network for anything: the demo season, from the app's own address. */
export const LOADS_THE_DEMO = 'src/screens/more/demoSeason.ts';
