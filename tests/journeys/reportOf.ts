import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** A cell of the report, as far as the screens show it. */
export interface ReportCell {
  readonly clubId: string;
  readonly specId: string;
  readonly swing: string;
  readonly shots: number;
  readonly stock_m: number;
  readonly lo80_m: number;
  readonly hi80_m: number;
  readonly next_m: readonly number[];
}

/** The cells that the report command prints for a file of the project. */
export function reportOf(file: string): readonly ReportCell[] {
  const out = execFileSync(process.execPath, ['.scripts/report.mjs', file, '--json'], { cwd: root, encoding: 'utf8' });
  return (JSON.parse(out) as { players: { cells: ReportCell[] }[] }).players[0].cells;
}
