/** ∫ f from low to high by Simpson's rule on 4,000 panels: the tests' own, slow and plain. */
export function integrate(f: (x: number) => number, low: number, high: number): number {
  const panels = 4000;
  const step = (high - low) / panels;
  let sum = f(low) + f(high);
  for (let i = 1; i < panels; i++) sum += (i % 2 === 0 ? 2 : 4) * f(low + i * step);
  return (sum * step) / 3;
}
