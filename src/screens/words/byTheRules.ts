import type { Refusing } from '../../golf/rulesOfPlay.ts';

/** Why something waits until the round is over, by its clause. */
export const byTheRules: Readonly<Record<Refusing, string>> = {
  '4.1a(2)': 'Not now: only a club damaged in the round, and not in anger, may be replaced (Rule 4.1a(2)).',
  '4.1a(3)': 'Not now: how a club plays may not be changed during the round (Rule 4.1a(3)).',
  '4.1b': 'Not now: the Rules let you add a club only if you started with fewer than 14 (Rule 4.1b).',
  '4.1c': 'Not now: a club too many stays out of play (Rule 4.1c).',
  '4.3a':
    'Not now: a round by the Rules is being played, and what its frozen book rests on stays as it is until that round is over (Rule 4.3a).',
  '5.7': 'Not now: the round is stopped, not over (Rule 5.7).',
  'G-5': 'Not now: no distance devices in this round (Local Rule G-5).',
  'no round': 'There is no round to do that in.',
  'round open': 'Another round is being played. Close that one first.',
  'phones not allowed': 'Phones are not allowed there: play from the printed card, and enter the shots afterwards.',
  'own choice': 'Not now: it waits until the round is over.',
};
