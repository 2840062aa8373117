import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync(new URL('../../src/screens/theme.css', import.meta.url), 'utf8');

/** The colours that a theme sets, on top of those of plain paper. */
function coloursOf(theme: string): Record<string, string> {
  const block = (selector: string): [string, string][] => {
    const start = css.indexOf(`${selector} {`);
    if (start < 0) throw new Error(`theme.css has no ${selector}`);
    const body = css.slice(start, css.indexOf('}', start));
    return [...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{3,6});/gi)].map(([, name, colour]) => [name, colour]);
  };
  return Object.fromEntries([...block(':root'), ...(theme === 'paper' ? [] : block(`:root[data-theme='${theme}']`))]);
}

/** Relative luminance of an sRGB colour. Source: W3C, WCAG 2.2 (2023), “relative luminance”. */
function luminance(colour: string): number {
  const hex = colour.length === 4 ? colour.replace(/[0-9a-f]/gi, '$&$&') : colour;
  const [r, g, b] = [1, 3, 5]
    .map((i) => Number.parseInt(hex.slice(i, i + 2), 16) / 255)
    .map((v) => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio of two colours. Source: W3C, WCAG 2.2 (2023), “contrast ratio”. */
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

test('the formula gives the ratios that the standard names', () => {
  expect(contrast('#000', '#fff')).toBeCloseTo(21, 5);
  // #767676 on white is the known lightest grey at 4.5 : 1. Common practice, no source.
  expect(contrast('#767676', '#fff')).toBeCloseTo(4.54, 2);
});

describe.each(['paper', 'night', 'glare'])('%s', (theme) => {
  const colours = coloursOf(theme);
  test.each(['paper', 'sheet'])('numbers on %s at least 12 : 1, every text 7 : 1, strokes 3 : 1', (ground) => {
    expect(contrast(colours.ink, colours[ground])).toBeGreaterThanOrEqual(12);
    for (const text of ['quiet', 'mark', 'warn']) {
      expect(contrast(colours[text], colours[ground]), text).toBeGreaterThanOrEqual(7);
    }
    expect(contrast(colours.line, colours[ground])).toBeGreaterThanOrEqual(3);
  });
});
