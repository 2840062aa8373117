/** Where on the sheet a ball pitched, in shares of its width and height; the flag is in the middle. */
export type Spot = readonly [across: number, down: number];
export const ON_GREEN: Spot = [0.42, 0.62];
export const SHORT: Spot = [0.5, 0.98];

/** One tap of a script: a key of the pad, a slot of the sentence, an action, or a spot on the sheet. */
export type Step = string | { readonly slot: string } | { readonly action: string } | { readonly spot: Spot };

export const FLAG = { slot: 'flag' } as const;
export const SKIP = { action: 'Skip' } as const;
export const GREEN = { spot: ON_GREEN } as const;

/**
 * An invented nine of a golfer who changes clubs on every shot: what is tapped for each shot, then for
 * the putts. The pars are not known, so the flag of a par 3 costs a tap more.
 */
export const NINE: readonly { readonly shots: readonly (readonly Step[])[]; readonly putts: readonly string[] }[] = [
  {
    shots: [
      ['driver', 'solid', 'fairway'],
      ['140', '147', '8 iron', 'solid', GREEN],
    ],
    putts: ['20', '2 putts in all'],
  },
  {
    shots: [
      ['3 wood', 'thin', 'light rough'],
      ['110', '118', '9 iron', 'fat', { spot: SHORT }, 'greenside bunker'],
      ['58°', 'full', 'solid', 'green'],
    ],
    putts: ['8', 'holed'],
  },
  { shots: [[FLAG, '160', '165', '6 iron', 'solid', GREEN]], putts: ['2 putts'] },
  {
    shots: [
      ['driver', 'solid', 'total', '250', '251', 'fairway'],
      [SKIP, '5 iron', 'solid', 'fairway'],
      ['70', '78', '54°', '9:00', 'solid', GREEN],
    ],
    putts: ['12', '2 putts in all'],
  },
  {
    shots: [
      ['driver', 'toe', 'lost'],
      ['3 wood', 'solid', 'fairway'],
      ['150', '152', '7 iron', 'thin', { spot: SHORT }, 'light rough'],
      ['chip', '58°', 'solid', 'green'],
    ],
    putts: ['5', 'holed'],
  },
  {
    shots: [
      ['4 hybrid', 'solid', 'cleared', '190', '195', 'fairway'],
      ['100', '104', '50°', 'full', 'solid', GREEN],
    ],
    putts: ['30', '2 putts in all'],
  },
  { shots: [[FLAG, '130', '131', '9 iron', 'solid', GREEN]], putts: ['15', '2 putts in all'] },
  {
    shots: [
      ['driver', 'heel', 'light rough'],
      [SKIP, '5 iron', 'solid', 'penalty area'],
      ['fairway', '90', '96', 'PW', 'full', 'solid', GREEN],
    ],
    putts: ['3', 'holed'],
  },
  {
    shots: [
      ['driver', 'solid', 'fairway'],
      ['80', '88', '54°', '10:30', 'solid', GREEN],
    ],
    putts: ['1 putt'],
  },
];
