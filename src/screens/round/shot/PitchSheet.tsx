import { useEffect, useRef, useState } from 'preact/hooks';
import { metres } from '../../../units/metres.ts';
import type { DistanceUnit } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { edgeOfGreen } from './green.ts';
import { isMeant, Key } from './Key.tsx';
import { KeyGrid } from './KeyGrid.tsx';
import css from './PitchSheet.module.css';
import type { Spot } from './pitch.ts';
import { pointAt, REACH, type SheetScale, sheetScale, spotAt } from './sheetScale.ts';
import { spokenDistance } from './spokenDistance.ts';
import { spotWords } from './spotWords.ts';

interface Props {
  readonly spot: Spot | null;
  readonly unit: DistanceUnit;
  /** What the mark stands for. */
  readonly of: 'pitch' | 'aim';
  readonly onMark: (spot: Spot) => void;
}

const AT_FLAG: Spot = { long_m: metres(0), right_m: metres(0) };
const MOVES: Readonly<Record<string, readonly [long: number, right: number]>> = {
  ArrowUp: [1, 0],
  ArrowDown: [-1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/** Most digits typed before an arrow: no ball pitches a thousand steps from its flag. */
const MOST_DIGITS = 3;

/** How many steps an arrow moves the mark after the digits typed: one after none. */
function stepsTyped(digits: string): number {
  return digits === '' ? 1 : Number(digits);
}

/**
 * A green as a hole-location sheet draws it, the flag in the middle and lines in paces: one tap says
 * long or short and left or right. By keys: the arrows move a mark, by as many steps as were typed before, and Enter
 * takes it; or by steps.
 */
export function PitchSheet({ spot, unit, of, onMark }: Props) {
  const box = useRef<HTMLButtonElement>(null);
  const [size, setSize] = useState({ width: 272, height: 208 });
  const [reach, setReach] = useState<keyof typeof REACH>(spot && isFar(spot, unit) ? 'wide' : 'close');
  const [mark, setMark] = useState(spot);
  const [isSteps, setSteps] = useState(false);
  /** Digits typed before an arrow. */
  const count = useRef('');
  useEffect(() => {
    const sheet = box.current;
    if (isSteps || !sheet) return;
    const measure = () => setSize({ width: sheet.clientWidth, height: sheet.clientHeight });
    const watcher = new ResizeObserver(measure);
    watcher.observe(sheet);
    measure();
    return () => watcher.disconnect();
  }, [isSteps]);

  const step_m = spokenDistance(1, unit);
  const scale = sheetScale(size.width, size.height, REACH[reach], step_m);
  const said = mark ? spotWords(mark, unit) : shotWords.sheet.nothing;
  const { keys, sheet } = shotWords;
  const move = (long: number, right: number) => {
    setMark((before) => {
      const { long_m, right_m } = before ?? AT_FLAG;
      return { long_m: metres(long_m + long * step_m), right_m: metres(right_m + right * step_m) };
    });
  };
  const steps = (
    <KeyGrid
      columns={3}
      isMirrored={false}
      keys={[
        { id: 'left', face: `← ${sheet.left}`, name: `${sheet.left}: ${sheet.rightLess}`, onPress: () => move(0, -1) },
        { id: 'long', face: `↑ ${sheet.long}`, name: `${sheet.long}: ${sheet.longMore}`, onPress: () => move(1, 0) },
        {
          id: 'right',
          face: `→ ${sheet.right}`,
          name: `${sheet.right}: ${sheet.rightMore}`,
          onPress: () => move(0, 1),
        },
        { id: 'sheet', face: keys.sheet, look: 'quiet', onPress: () => setSteps(false) },
        {
          id: 'short',
          face: `↓ ${sheet.short}`,
          name: `${sheet.short}: ${sheet.longLess}`,
          onPress: () => move(-1, 0),
        },
        { id: 'set', face: said, name: `${keys.set}: ${said}`, look: 'main', onPress: () => onMark(mark ?? AT_FLAG) },
      ]}
    />
  );
  if (isSteps) return steps;
  return (
    <div class={css.pad}>
      <div class={css.sheet}>
        <Drawing scale={scale} mark={mark} lines={reach === 'close' ? 5 : 20} />
        <button
          ref={box}
          type="button"
          class={css.touch}
          aria-label={of === 'pitch' ? sheet.label(said) : sheet.aimLabel(said)}
          data-key=""
          data-sheet=""
          onKeyDown={(event) => {
            const by = MOVES[event.key];
            const isDigit = /^\d$/.test(event.key);
            if (!by && !isDigit) return;
            event.preventDefault();
            if (by) move(by[0] * stepsTyped(count.current), by[1] * stepsTyped(count.current));
            count.current = isDigit ? `${count.current}${event.key}`.slice(-MOST_DIGITS) : '';
          }}
          onClick={(event) => {
            if (!isMeant(event)) return;
            if (event.detail === 0) return onMark(mark ?? AT_FLAG);
            const { left, top } = event.currentTarget.getBoundingClientRect();
            const touched = spotAt(scale, event.clientX - left, event.clientY - top);
            setMark(touched);
            onMark(touched);
          }}
        />
      </div>
      <div class={css.side}>
        <Key onPress={() => setReach(reach === 'close' ? 'wide' : 'close')}>
          {reach === 'close' ? keys.wider : keys.closer}
        </Key>
        <Key look="quiet" onPress={() => setSteps(true)}>
          {keys.steps}
        </Key>
      </div>
    </div>
  );
}

function isFar(spot: Spot, unit: DistanceUnit): boolean {
  return Math.max(Math.abs(spot.long_m), Math.abs(spot.right_m)) > REACH.close * spokenDistance(1, unit);
}

/** Room that a label beside a line takes, in pixels. */
const LABEL_PX = 62;

const OUTLINE = Array.from({ length: 60 }, (_, index) => (index / 60) * 2 * Math.PI);

/** The green, its lines and the mark; `lines` is the number of paces between two lines. */
function Drawing({ scale, mark, lines }: { scale: SheetScale; mark: Spot | null; lines: number }) {
  const { width, height, pxPerStep } = scale;
  const outline = OUTLINE.map((turn) => {
    const edge = edgeOfGreen(turn);
    const { x, y } = pointAt(scale, edge * Math.cos(turn), edge * Math.sin(turn));
    return `${x.toFixed(1)} ${y.toFixed(1)}`;
  }).join('L');
  const at = mark && pointAt(scale, mark.long_m, mark.right_m);
  const [flagX, flagY] = [width / 2, height / 2];
  const paces = (length: number) => {
    const most = Math.floor(length / 2 / pxPerStep / lines);
    return Array.from({ length: 2 * most + 1 }, (_, index) => (index - most) * lines);
  };
  return (
    <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true" class={css.drawing}>
      <path d={`M${outline}Z`} class={css.green} />
      {paces(height).map((long) => (
        <g key={`long ${long}`}>
          <path d={`M0 ${flagY - long * pxPerStep}H${width}`} class={long === 0 ? css.axis : css.line} />
          {long !== 0 && (
            <text x={4} y={flagY - long * pxPerStep - 3}>
              {long > 0 ? shotWords.long(`${long}`) : shotWords.short(`${-long}`)}
            </text>
          )}
        </g>
      ))}
      {paces(width).map((right) => (
        <g key={`right ${right}`}>
          <path d={`M${flagX + right * pxPerStep} 0V${height}`} class={right === 0 ? css.axis : css.line} />
          {right !== 0 && Math.abs(right) % 10 === 0 && flagX + right * pxPerStep + LABEL_PX < width && (
            <text x={flagX + right * pxPerStep + 3} y={height - 5}>
              {right > 0 ? shotWords.right(`${right}`) : shotWords.left(`${-right}`)}
            </text>
          )}
        </g>
      ))}
      <path d={`M${flagX} ${flagY}v-26l15 6-15 6`} class={css.flag} />
      <circle cx={flagX} cy={flagY} r={3} class={css.hole} />
      {at && <path d={`M${at.x - 9} ${at.y}h18M${at.x} ${at.y - 9}v18`} class={css.mark} />}
    </svg>
  );
}
