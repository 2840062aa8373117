import type { Club } from '../../../../src/golf/club.ts';
import { typicalBag } from '../../../../src/golf/typicalBag.ts';
import type { Asking } from '../../../../src/screens/round/shot/slots.ts';

/** The clubs of an invented golfer: a usual bag with the names as ids. */
export const clubs: readonly Club[] = typicalBag().map(({ id: _id, spec, ...form }) => ({
  ...form,
  id: form.name.replace(/\W+/g, '-'),
  specPeriods: [{ ...spec, id: `${form.name} as bought`.replace(/\W+/g, '-'), from: '2026-01-01' }],
  changedAt: '',
  device: '',
}));

const wedges = new Set(clubs.filter((club) => club.kind === 'wedge').map((club) => club.id));

/** What a shot is asked on a hole of that par. */
export function on(par: number | null): Asking {
  return { par, wedges };
}
