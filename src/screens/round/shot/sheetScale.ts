import { metres } from '../../../units/metres.ts';
import type { Spot } from './pitch.ts';

/** A sheet on the screen: its size in pixels, and how many pixels one step (a yard or metre) takes. The flag is in the middle. */
export interface SheetScale {
  readonly width: number;
  readonly height: number;
  readonly pxPerStep: number;
  /** Length of one step, metres. */
  readonly step_m: number;
}

/** Steps from the flag to the nearer edge of the sheet: up close, and for a ball that missed by more. */
export const REACH = { close: 18, wide: 70 } as const;

/** The scale that shows so many steps from the flag to the nearer edge. */
export function sheetScale(width: number, height: number, reach: number, step_m: number): SheetScale {
  return { width, height, pxPerStep: Math.min(width, height) / 2 / reach, step_m };
}

/** The spot under a point of the sheet, to the whole step: nobody judges a pitch closer. */
export function spotAt(scale: SheetScale, x: number, y: number): Spot {
  const whole = (px: number) => metres((Math.round(px / scale.pxPerStep) + 0) * scale.step_m);
  return { long_m: whole(scale.height / 2 - y), right_m: whole(x - scale.width / 2) };
}

/** The point of the sheet at a spot, in pixels. */
export function pointAt(scale: SheetScale, long_m: number, right_m: number): { x: number; y: number } {
  const px = scale.pxPerStep / scale.step_m;
  return { x: scale.width / 2 + right_m * px, y: scale.height / 2 - long_m * px };
}
