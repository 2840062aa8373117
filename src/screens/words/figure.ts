/** The language of every text below and of every date and figure on screen. */
export const LOCALE = 'en-GB';

const plural = new Intl.PluralRules(LOCALE);

/** `1 shot`, `12 shots`. */
export function counted(n: number, one: string, other: string): string {
  return `${figure(n)} ${plural.select(n) === 'one' ? one : other}`;
}

const figures = new Intl.NumberFormat(LOCALE);

/** A whole or decimal figure as this language writes it. */
export function figure(n: number): string {
  return figures.format(n).replace('-', '\u2212');
}

const percents = new Intl.NumberFormat(LOCALE, { style: 'percent', maximumFractionDigits: 0 });

/** A probability from 0 to 1 in words that never claim certainty. */
export function sure(p: number): string {
  if (p > 0.99) return `more than ${percents.format(0.99)}`;
  if (p < 0.01) return `less than ${percents.format(0.01)}`;
  return percents.format(p);
}
