type Row = readonly string[];

/** Rows as columns of one width each; the columns named in `left` stand to the left, figures to the right. */
export function textTable(rows: readonly Row[], left: readonly number[]): string[] {
  const size = (text: string): number => [...text].length;
  const widths = rows.reduce<number[]>((all, row) => row.map((text, c) => Math.max(all[c] ?? 0, size(text))), []);
  const put = (text: string, column: number): string => {
    const room = ' '.repeat(widths[column] - size(text));
    return left.includes(column) ? text + room : room + text;
  };
  return rows.map((row) => `  ${row.map(put).join('  ')}`.trimEnd());
}

/** Lines under a heading with an empty line before it; nothing at all when there are none. */
export function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines];
}
