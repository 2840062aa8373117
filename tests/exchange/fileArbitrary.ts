import fc from 'fast-check';
import type * as z from 'zod/mini';
import { carrybookFileSchema } from '../../src/exchange/carrybookFile.ts';
import { dateField, instantField } from '../../src/golf/instant.ts';
import { swingField } from '../../src/golf/swing.ts';
import { cleanText, idField } from '../../src/golf/text.ts';

type Schema = z.core.$ZodType;

const instant = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());
const id = fc.stringMatching(/^[a-c][0-3]$/);
const forms = new Map<Schema, fc.Arbitrary<unknown>>([
  [idField, id],
  [swingField, fc.constantFrom('full', '7:30', '9:00', '10:30', '12:59')],
  [instantField, instant],
  [dateField, instant.map((at) => at.slice(0, 10))],
]);

/** JSON that reads back as itself: no key that is refused, no −0 (JSON text has none). */
const unknownValue = fc
  .jsonValue({ maxDepth: 2 })
  .map((value) => JSON.parse(JSON.stringify(value).replaceAll(/__proto__|constructor|prototype/g, 'x')));

/** Values that a schema accepts, built from the schema itself, defaults left out at times and unknown keys added. */
function valuesOf(schema: Schema): fc.Arbitrary<unknown> {
  const form = forms.get(schema);
  if (form) return form;
  const def = (schema as z.core.$ZodTypes)._zod.def;
  const checks = (def.checks ?? []).map((check) => check._zod.def as z.core.$ZodChecks['_zod']['def']);
  const limit = (name: string): number | undefined => {
    const check = checks.find((each) => each.check === name) as { value?: number; maximum?: number; minimum?: number };
    return check && Number(check.value ?? check.maximum ?? check.minimum);
  };
  switch (def.type) {
    case 'number': {
      const min = limit('greater_than') ?? -1e6;
      const max = limit('less_than') ?? 1e6;
      if ((def as { check?: string }).check === 'number_format') return fc.integer({ min, max });
      return fc.double({ min, max, noNaN: true }).map((value) => value + 0);
    }
    case 'string': {
      const most = limit('max_length') ?? 100;
      if (checks.some((each) => each.check === 'string_format')) return id;
      return fc.string({ maxLength: most, unit: 'binary' }).map((text) => cleanText(text.slice(0, most)));
    }
    case 'boolean':
      return fc.boolean();
    case 'enum':
      return fc.constantFrom(...Object.values(def.entries));
    case 'literal':
      return fc.constantFrom(...def.values);
    case 'nullable':
      return fc.option(valuesOf(def.innerType), { nil: null });
    case 'default':
    case 'optional':
      return valuesOf(def.innerType);
    case 'union':
      return fc.oneof(...def.options.map(valuesOf));
    case 'array':
      return fc.array(valuesOf(def.element), {
        minLength: limit('min_length') ?? 0,
        maxLength: Math.min(limit('max_length') ?? 5, 5),
      });
    case 'object': {
      const shape = def.shape as Record<string, Schema>;
      const needed = Object.entries(shape)
        .filter(([, inner]) => !['default', 'optional'].includes(inner._zod.def.type))
        .map(([key]) => key);
      const known = fc.record(Object.fromEntries(Object.entries(shape).map(([key, inner]) => [key, valuesOf(inner)])), {
        requiredKeys: needed,
      });
      const unknown = fc.dictionary(fc.stringMatching(/^x[a-z]{1,3}$/), unknownValue, { maxKeys: 1 });
      return fc.tuple(unknown, known).map(([others, record]) => ({ ...others, ...record }));
    }
    default:
      throw new RangeError(`no values known for a schema of type ${def.type}`);
  }
}

type Keyed = Record<string, unknown>;

function unique(list: unknown, keyOf: (each: Keyed) => unknown): Keyed[] {
  const all = new Map(((list ?? []) as Keyed[]).map((each) => [keyOf(each), each]));
  return [...all.values()];
}

/** Bends a file so that no id repeats and none leads nowhere: what is missing stands among the deleted. */
function made(file: Keyed): Keyed {
  const clubs = unique(file.clubs, ({ id }) => id);
  for (const club of clubs) club.specPeriods = unique(club.specPeriods, ({ id }) => id);
  const rounds = unique(file.rounds, ({ id }) => id);
  const shots = unique(file.shots, ({ id }) => id);
  const dead = unique(file.deleted, ({ of, id }) => `${of ?? 'shot'} ${id}`);
  const bury = (of: string, id: unknown): void => {
    if (!dead.some((each) => (each.of ?? 'shot') === of && each.id === id)) dead.push({ id, of });
  };
  for (const round of rounds) {
    if (round.holes) round.holes = unique(round.holes, ({ number }) => number);
    for (const clubId of (round.bag ?? []) as string[])
      if (!clubs.some(({ id }) => id === clubId)) bury('club', clubId);
    for (const hole of (round.holes ?? []) as Keyed[]) {
      for (const { clubId } of (hole.putts ?? []) as Keyed[]) {
        if (typeof clubId === 'string' && !clubs.some(({ id }) => id === clubId)) bury('club', clubId);
      }
    }
  }
  for (const shot of shots) {
    if (!rounds.some(({ id }) => id === shot.roundId)) bury('round', shot.roundId);
    const club = clubs.find(({ id }) => id === shot.clubId);
    if (club) shot.specId = (club.specPeriods as Keyed[])[0].id;
    else if (shot.clubId === null) shot.specId = null;
    else bury('club', shot.clubId);
  }
  const reviews = unique(file.reviews, ({ id }) => id);
  const done = unique(file.done, ({ reviewId }) => reviewId);
  return { ...file, clubs, rounds, shots, reviews, done, deleted: dead };
}

/** Whole files as other programs may write them, with every key of the format coming up. */
export const fileArbitrary: fc.Arbitrary<Keyed> = valuesOf(carrybookFileSchema).map((file) => made(file as Keyed));
