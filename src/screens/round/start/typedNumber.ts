/** A number as typed, with a comma or a point; null: nothing typed; NaN never: `wrong` instead. */
export function typedNumber(text: string): number | null | 'wrong' {
  const trimmed = text.trim().replace('\u2212', '-').replace(',', '.');
  if (trimmed === '') return null;
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(trimmed) ? Number(trimmed) : 'wrong';
}
