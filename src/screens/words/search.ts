import { counted, sure } from './figure.ts';

/** Every text of the page on which a number is searched. */
export const searchWords = {
  title: 'Find a number',
  sub: (unit: string) => `Carry in ${unit}, from a good lie, standard conditions`,
  wanted: (unit: string) => `Carry wanted, ${unit}`,
  hazard: (unit: string) => `It must carry, ${unit}`,
  hazardNote: 'A bunker or water on the line. May stay empty.',
  wrong: (most: number) => `Enter a whole number from 1 to ${most}.`,
  notNow:
    'Not while a round by the Rules is open: numbers may then be read off the card, but not searched for where the ball lies (Rule 4.3a).',
  reckoning: 'Reckoning …',
  failed: (why: string) => `The search cannot be made: ${why}`,
  none: 'No club and swing of the bag reaches that number 1 time in 20.',
  results: 'What reaches it',
  tie: 'as good as the one above: too close to call',
  near: (chance: number, near: string) => `${sure(chance)} within ${near}`,
  over: (chance: number) => `${sure(chance)} over`,
  shots: (n: number) => (n === 0 ? 'no own shots' : counted(n, 'own shot', 'own shots')),
  howTo: (near: string) =>
    `Chances are of the next ball, mishits included: within ${near} of the number, long or short, and over what must be carried. The number is the stock carry, ± 8 in 10 sure.`,
  label: (club: string, swing: string) => `${club} ${swing}`,
} as const;
