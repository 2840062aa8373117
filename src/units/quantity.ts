declare const unit: unique symbol;

/**
 * A number that carries its unit in the type and nothing at run time.
 *
 * The brand is a function from the unit to itself, so it is invariant: metres are never accepted
 * where yards are wanted, not even through a generic. Arithmetic gives a plain `number`; it becomes
 * a quantity again only through a constructor of this folder.
 */
export type Quantity<Unit extends string> = number & { readonly [unit]: (u: Unit) => Unit };

/**
 * Checks that a number can be a quantity and brands it.
 *
 * @param value the figure in the unit named; any sign.
 * @param symbol the unit as it should read in the error, for instance `m`.
 * @throws RangeError with value and unit when the figure is NaN or infinite.
 */
export function quantity<Unit extends string>(value: number, symbol: string): Quantity<Unit> {
  if (!Number.isFinite(value)) {
    throw new RangeError(`${value} ${symbol} is not a quantity: a finite number is needed`);
  }
  return value as Quantity<Unit>;
}
