import type { TeamPage } from '../../book/teamPage.ts';
import { type BagEntry, type BagPair, filledYardages, twoBags } from '../../book/twoBags.ts';
import { metres } from '../../units/metres.ts';
import { distanceWithUnit, inUnit, plusMinus, wholeDistance } from '../distance.ts';
import { lengthIn } from '../lengthIn.ts';
import { unit } from '../unit.ts';
import { figure } from '../words/figure.ts';
import { teamWords } from '../words/team.ts';
import { teamCareWords } from '../words/teamCare.ts';
import { words as allWords } from '../words.ts';
import css from './Team.module.css';

const words = teamCareWords.two;

/** Odds from which a difference is one to rely on, and from which it is worth a word. Own choice. */
const SURE = 0.9;
const PERHAPS = 0.7;

/** Steps of the table of distances, and how far off a club may be to fill one, in the unit on screen. Own choice. */
const STEP = 10;
const NEAR = 8;

interface Props {
  readonly first: TeamPage;
  readonly second: TeamPage;
  readonly names: readonly [string, string];
}

/** The difference of a pair in words with its odds. */
function differenceWords({ difference, first, second }: BagPair, names: Props['names']): string {
  if (!difference || !first || !second) return '';
  if (first.number.shots === 0 || second.number.shots === 0) return words.borrowed;
  const isFirst = difference.pLonger >= 0.5;
  const [name, p] = isFirst ? [names[0], difference.pLonger] : [names[1], 1 - difference.pLonger];
  const by = distanceWithUnit(metres(Math.abs(difference.m)), unit.value);
  if (p >= SURE) return words.longer(name, by, p);
  return p >= PERHAPS ? words.perhaps(name, by, p) : words.same(name, p);
}

function Entry({ name, entry }: { readonly name: string; readonly entry: BagEntry | null }) {
  if (!entry) {
    return (
      <div>
        <p class={css.quiet}>{name}</p>
        <p>{words.none}</p>
      </div>
    );
  }
  const { club, number, toNext_m } = entry;
  const aside = [
    words.loft(allWords.loft(club.loft_deg)),
    ...(toNext_m === null ? [] : [words.step(wholeDistance(toNext_m, unit.value))]),
    ...(number.next80_m
      ? [words.spread(wholeDistance(number.next80_m[0], unit.value), wholeDistance(number.next80_m[1], unit.value))]
      : []),
  ];
  return (
    <div>
      <p class={css.quiet}>{name}</p>
      <p>
        {number.shots === 0 && '~'}
        <span class={css.figure}>{wholeDistance(number.stock_m, unit.value)}</span> ±{' '}
        {plusMinus(number.lo80_m, number.hi80_m, unit.value)} · {figure(number.shots)}
      </p>
      <p class={css.quiet}>{aside.join(' · ')}</p>
    </div>
  );
}

/** Club by club with differences in words, and which club of each bag fills which distance. */
export function TwoBagsTables({ first, second, names }: Props) {
  const pairs = twoBags(first, second);
  const carries = pairs.flatMap((pair) =>
    [pair.first, pair.second].flatMap((entry) => (entry ? [inUnit(entry.number.stock_m, unit.value)] : [])),
  );
  const from = Math.ceil(Math.min(...carries) / STEP) * STEP;
  const to = Math.floor(Math.max(...carries) / STEP) * STEP;
  const steps = carries.length === 0 ? [] : Array.from({ length: (to - from) / STEP + 1 }, (_, i) => from + i * STEP);
  const distances = steps.map((step) => lengthIn(step, unit.value));
  const filled = filledYardages(first, second, distances, lengthIn(NEAR, unit.value));
  const fills = (entry: BagEntry | null) =>
    entry
      ? `${entry.club.name || allWords.loft(entry.club.loft_deg)}${entry.number.swing === 'full' ? '' : ` ${entry.number.swing}`}`
      : words.nothing;
  return (
    <>
      <section class={css.group} aria-labelledby="club-by-club">
        <h2 id="club-by-club">{words.clubs}</h2>
        <p class={css.quiet}>{words.says}</p>
        <ul>
          {pairs.map((pair) => {
            const called = teamWords.column(pair.column, pair.swing);
            return (
              <li key={called} class={css.pair}>
                <h3 class={css.across}>{called}</h3>
                <Entry name={names[0]} entry={pair.first} />
                <Entry name={names[1]} entry={pair.second} />
                <p class={css.across}>{differenceWords(pair, names)}</p>
              </li>
            );
          })}
        </ul>
      </section>
      <section class={css.group} aria-labelledby="yardages">
        <h2 id="yardages">{words.yardages}</h2>
        <table class={css.plain}>
          <thead>
            <tr>
              <th scope="col">{words.distance}</th>
              {names.map((name, i) => (
                <th key={`${i} ${name}`} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {filled.map((line) => (
              <tr key={line.distance_m}>
                <th scope="row">{distanceWithUnit(line.distance_m, unit.value)}</th>
                <td>{fills(line.first)}</td>
                <td>{fills(line.second)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
