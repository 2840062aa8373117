import * as z from 'zod/mini';

/**
 * The zod schema of a number read from outside that becomes a branded quantity.
 *
 * Nothing happens to the figure: the range is checked, the brand exists only in the type. It stands
 * here because brands are given in this folder and nowhere else.
 *
 * @param least smallest figure accepted, in the unit of the brand, inclusive.
 * @param most largest figure accepted, inclusive.
 */
export function quantityField<Q extends number>(least: number, most: number): z.ZodMiniType<Q, number> {
  return z.number().check(z.gte(least), z.lte(most)) as unknown as z.ZodMiniType<Q, number>;
}
