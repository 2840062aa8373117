import { type Club, specOn } from '../golf/club.ts';
import type { Logbook } from '../golf/logbook.ts';
import { clockHours, type Swing } from '../golf/swing.ts';
import type { Metres } from '../units/metres.ts';
import type { Book, BookCell } from './book.ts';
import type { PlanSheets } from './planSheets.ts';
import { planText } from './planText.ts';
import type { SpokenLength } from './spokenLength.ts';
import { section, textTable } from './textTable.ts';

export type { SpokenLength };

const NOT_PLAYED = 'not played';

/** Writes one golfer's book for people. */
class TextBook {
  private readonly logbook: Logbook;
  private readonly book: Book;
  private readonly length: SpokenLength;
  private readonly clubs: ReadonlyMap<string, Club>;

  constructor(logbook: Logbook, book: Book, length: SpokenLength) {
    this.logbook = logbook;
    this.book = book;
    this.length = length;
    this.clubs = new Map(logbook.clubs.map((club) => [club.id, club]));
  }

  lines(): string[] {
    const { player } = this.logbook;
    return [
      `${player.name === '' ? `Player ${player.id}` : player.name}: book as of ${this.book.asOf}, in ${this.length.unit}`,
      ...section('Card: stock carry of solid strikes, full swing, in loft order', this.card()),
      ...section('Wedges: stock carry ± (own shots)', this.wedges()),
      ...section('Other numbers', this.others()),
      ...section('Gaps between neighbours', this.gaps()),
      ...section('Left out', this.leftOut()),
    ];
  }

  private figure(length: Metres): string {
    return this.length.of(length).toFixed(0);
  }

  private name(clubId: string): string {
    const club = this.clubs.get(clubId);
    return club && club.name !== '' ? club.name : clubId;
  }

  private loft(cell: BookCell): number {
    const spec = this.clubs.get(cell.clubId)?.specPeriods.find(({ id }) => id === cell.specId);
    return spec?.loft_deg ?? 0;
  }

  /** In the bag, and as the club is built at the moment of the book. */
  private isCurrent(cell: BookCell): boolean {
    const club = this.clubs.get(cell.clubId);
    return club?.inBag === true && specOn(club, this.book.asOf).id === cell.specId;
  }

  private isWedge(cell: BookCell): boolean {
    return this.clubs.get(cell.clubId)?.kind === 'wedge';
  }

  /** The golfer says that this swing is none of theirs, and no shot says otherwise. */
  private isNotPlayed(cell: BookCell): boolean {
    return cell.shots === 0 && this.clubs.get(cell.clubId)?.notPlayed.includes(cell.swing) === true;
  }

  private plusMinus(cell: BookCell): string {
    const half = (this.length.of(cell.hi80_m) - this.length.of(cell.lo80_m)) / 2;
    return `± ${half.toFixed(0)}`;
  }

  /** 80 % of next balls: from the second to the eighteenth of the 19 quantiles, p10 to p90. */
  private nextBall(cell: BookCell): string {
    return `${this.figure(cell.next_m[1])} to ${this.figure(cell.next_m[17])}`;
  }

  private numbers(cells: readonly BookCell[], withSwing: boolean): string[] {
    if (cells.length === 0) return [];
    const swing = (text: string): string[] => (withSwing ? [text] : []);
    const head = ['club', ...swing('swing'), 'loft', 'stock', '±', 'next ball', 'shots', 'solid', 'how much is own'];
    const named = (cell: BookCell) => [this.name(cell.clubId), ...swing(cell.swing), `${this.loft(cell)}°`];
    const rows = cells.map((cell) => [
      ...named(cell),
      ...(this.isNotPlayed(cell) ? ['–', '–', '–', '0', '0', NOT_PLAYED] : this.answer(cell)),
    ]);
    return textTable([head, ...rows], withSwing ? [0, 1, 8] : [0, 7]);
  }

  private answer(cell: BookCell): string[] {
    return [
      this.figure(cell.stock_m),
      this.plusMinus(cell),
      this.nextBall(cell),
      `${cell.shots}`,
      `${cell.solid}`,
      cell.borrowed,
    ];
  }

  private inLoftOrder(cells: readonly BookCell[]): BookCell[] {
    return cells.toSorted((a, b) => this.loft(a) - this.loft(b) || b.stock_m - a.stock_m);
  }

  private card(): string[] {
    const cells = this.book.cells.filter((cell) => cell.swing === 'full' && this.isCurrent(cell));
    return cells.length === 0 ? ['  no club in the bag has a number'] : this.numbers(this.inLoftOrder(cells), false);
  }

  private wedges(): string[] {
    const cells = this.book.cells.filter((cell) => this.isWedge(cell) && this.isCurrent(cell));
    if (cells.length === 0) return [];
    const swings = [...new Set<Swing>(cells.map((cell) => cell.swing))].sort((a, b) => clockHours(a) - clockHours(b));
    const clubIds = [...new Set(this.inLoftOrder(cells).map((cell) => cell.clubId))];
    const rows = clubIds.map((clubId) => [
      this.name(clubId),
      ...swings.map((swing) => {
        const cell = cells.find((each) => each.clubId === clubId && each.swing === swing);
        if (!cell) return '–';
        if (this.isNotPlayed(cell)) return NOT_PLAYED;
        const borrowed = cell.shots === 0 ? '~' : '';
        return `${borrowed}${this.figure(cell.stock_m)} ${this.plusMinus(cell)} (${cell.shots})`;
      }),
    ]);
    return [...textTable([['club', ...swings], ...rows], [0]), '  ~ no shots of your own: borrowed'];
  }

  private others(): string[] {
    const cells = this.book.cells.filter(
      (cell) => !this.isCurrent(cell) || (cell.swing !== 'full' && !this.isWedge(cell)),
    );
    return this.numbers(cells, true);
  }

  private gaps(): string[] {
    const rows = this.book.gaps.map((gap) => [
      `${this.name(gap.longer)} – ${this.name(gap.shorter)}`,
      this.figure(gap.gap_m),
      `${this.figure(gap.lo80_m)} to ${this.figure(gap.hi80_m)}`,
      gap.verdict,
      `${(gap.pSame * 100).toFixed(0)} %`,
    ]);
    return rows.length === 0 ? [] : textTable([['clubs', 'gap', '80 %', 'in words', 'same distance'], ...rows], [0, 3]);
  }

  private leftOut(): string[] {
    const counts = new Map<string, number>();
    for (const { why } of this.book.leftOut) counts.set(why, (counts.get(why) ?? 0) + 1);
    const reasons = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
    return textTable(
      reasons.map(([why, count]) => [`${count}`, count === 1 ? 'shot' : 'shots', why]),
      [1, 2],
    );
  }
}

/**
 * One golfer's book as tables for people: the card in loft order, the wedge matrix, other numbers, gaps
 * and what was left out and why, and with its plan sheets the bag, aim, practice and putting. Stock carries with half the width of their 80 % interval as ±, next
 * balls as the middle 80 %. Whole units; the exact figures are in the report for programs.
 *
 * @param length how lengths are said to this golfer.
 */
export function reportText(logbook: Logbook, book: Book, length: SpokenLength, sheets?: PlanSheets): string {
  const plans = sheets ? planText(logbook, sheets, length) : [];
  return `${[...new TextBook(logbook, book, length).lines(), ...plans].join('\n')}\n`;
}
