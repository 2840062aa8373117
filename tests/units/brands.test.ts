import { expect, test } from 'vitest';
import { type Metres, metres } from '../../src/units/metres.ts';
import type { Quantity } from '../../src/units/quantity.ts';
import { metresFromYards, type Yards, yards, yardsFromMetres } from '../../src/units/yards.ts';

/*
 * The compiler is what is tested here: each line under an expected error must fail to compile, or the type check of the
 * tests stops with "unused '@ts-expect-error' directive". What the lines do when run is looked at as well.
 */

function longer<Unit extends string>(a: Quantity<Unit>, b: Quantity<Unit>): Quantity<Unit> {
  return a > b ? a : b;
}

function longerOf<Length extends Metres | Yards>(a: Length, b: NoInfer<Length>): Length {
  return a > b ? a : b;
}

const carry: Metres = metres(140);
const shown: Yards = yards(153);

test('like goes with like', () => {
  const further: Metres = longer(carry, metres(150));
  const furtherShown: Yards = longerOf(shown, yards(150));
  expect([further, furtherShown]).toEqual([150, 153]);
});

test('yards and metres do not mix, not even through a generic', () => {
  // @ts-expect-error: one unit for both.
  const mixed = longer(carry, shown);
  // @ts-expect-error: one unit for both.
  const mixedOf = longerOf(carry, shown);
  // @ts-expect-error: one unit for both, named outright.
  const named = longer<'m'>(carry, shown);
  // @ts-expect-error: a union of units is no unit.
  const united = longer<'m' | 'yd'>(carry, shown);
  expect([mixed, mixedOf, named, united]).toEqual([153, 153, 153, 153]);
});

test('metres are not accepted as yards, yards not as metres, and no list of the one as a list of the other', () => {
  // @ts-expect-error: metres where yards are wanted.
  const asYards: Yards = carry;
  // @ts-expect-error: yards where metres are wanted.
  const asMetres: Metres = shown;
  // @ts-expect-error: a list of metres where yards are wanted.
  const list: readonly Yards[] = [carry];
  // @ts-expect-error: the conversion wants yards.
  const converted = metresFromYards(carry);
  // @ts-expect-error: the conversion wants metres.
  const convertedBack = yardsFromMetres(shown);
  expect([asYards, asMetres, list[0]]).toEqual([140, 153, 140]);
  expect(converted).toBeLessThan(carry);
  expect(convertedBack).toBeGreaterThan(shown);
});

test('a plain number is no quantity, and a sum of quantities is a plain number again', () => {
  // @ts-expect-error: a figure without a unit.
  const bare: Metres = 140;
  // @ts-expect-error: arithmetic loses the unit.
  const sum: Metres = carry + carry;
  // @ts-expect-error: arithmetic loses the unit, the more so across units.
  const crossed: Yards = carry + shown;
  expect([bare, sum, crossed]).toEqual([140, 280, 293]);
});
