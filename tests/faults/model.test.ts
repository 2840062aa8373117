import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { closeRound, reopenRound } from '../../src/actions/closeRound.ts';
import { deleteShot } from '../../src/actions/deleteShot.ts';
import { deleteRound } from '../../src/actions/editRound.ts';
import { editShot } from '../../src/actions/editShot.ts';
import type { Keeper } from '../../src/actions/keeper.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { moveShot } from '../../src/actions/moveShot.ts';
import { restoreFromBin } from '../../src/actions/restoreFromBin.ts';
import { setHole } from '../../src/actions/setHole.ts';
import { undo } from '../../src/actions/undo.ts';
import { retryUnsaved } from '../../src/actions/withUnsaved.ts';
import { mergeLogbooks } from '../../src/exchange/merge.ts';
import type { Lie } from '../../src/golf/lie.ts';
import { placesAfterMove } from '../../src/golf/moveInOrder.ts';
import { inOrder } from '../../src/golf/shotOrder.ts';
import { aRound, entry, logbookOf, type Phone, phone, reading } from '../actions/phone.ts';
import { shotOf } from '../golf/shotOf.ts';
import { breakStore, type Fault, mendStore } from './brokenStore.ts';

/** Runs of the model: few in every test run, many when asked to prove. */
const RUNS = process.env.CARRYBOOK_PROVE === '1' ? 2_000 : 200;

afterEach(mendStore);

/** What a shot is in the model: its place and one slot that is edited. */
interface ModelShot {
  readonly hole: number;
  readonly number: number;
  readonly lie: Lie | null;
  /** Orders shots of one number; when it was logged by the phone's clock. */
  readonly at: string;
}

/** The whole state that matters: rounds with their shots, pars noted, and the bin. */
interface State {
  readonly rounds: ReadonlyMap<string, { readonly closed: boolean; readonly par: number | null }>;
  readonly shots: ReadonlyMap<string, ModelShot & { readonly roundId: string }>;
  readonly bin: ReadonlyMap<string, 'shot' | 'round'>;
}

/** A plain logbook in memory: a state, and the states that undo goes back to. */
class Model {
  now: State = { rounds: new Map(), shots: new Map(), bin: new Map() };
  past: State[] = [];
  binned = new Map<string, State>();

  /** Goes on to a state; one that undo cannot leave (a round started) has no past. */
  become(next: Partial<State>, undoable = true) {
    if (undoable) this.past.push(this.now);
    this.now = { ...this.now, ...next };
  }
  openRound(): string | undefined {
    return [...this.now.rounds].find(([, round]) => !round.closed)?.[0];
  }
  shotsOf(roundId: string) {
    const shots = [...this.now.shots].filter(([, shot]) => shot.roundId === roundId);
    return inOrder(shots.map(([id, { hole, number, lie, at }]) => shotOf(id, { roundId, hole, number, lie, at })));
  }
}

/** The real thing: a phone, and the tab that is open. */
interface Real {
  readonly mine: Phone;
  keeper: Keeper;
}

const pick = <T>(list: readonly T[], which: number): T | undefined => list[which % Math.max(1, list.length)];
const without = <K, V>(map: ReadonlyMap<K, V>, ...keys: K[]) =>
  new Map([...map].filter(([key]) => !keys.includes(key)));
const withEntry = <K, V>(map: ReadonlyMap<K, V>, key: K, value: V) => new Map(map).set(key, value);

/** The stored logbook must be the model's, whole. */
async function agree(model: Model, real: Real) {
  const { now } = model;
  const logbook = await logbookOf(real.keeper);
  expect(logbook.rounds.map((round) => [round.id, round.closed, round.holes[0].par]).sort()).toEqual(
    [...now.rounds].map(([id, round]) => [id, round.closed, round.par]).sort(),
  );
  expect(
    logbook.shots.map(({ id, roundId, hole, number, lie }) => [id, { roundId, hole, number, lie }]).sort(),
  ).toEqual([...now.shots].map(([id, { roundId, hole, number, lie }]) => [id, { roundId, hole, number, lie }]).sort());
  const bin = await reading(real.keeper, (db) => db.bin.toArray());
  expect(bin.map(({ id, of }) => [id, of]).sort()).toEqual([...now.bin].sort());
  const [open, documents] = await reading(real.keeper, async (db) => [
    await db.shots.toArray(),
    await db.closedShots.toArray(),
  ]);
  const closedRounds = [...now.rounds].filter(([, round]) => round.closed).map(([id]) => id);
  expect(documents.map((document) => document.roundId).sort()).toEqual(closedRounds.sort());
  expect(open.every((shot) => now.rounds.get(shot.roundId)?.closed === false)).toBe(true);
  // The logbook is one that a merge leaves alone: no tombstone outlives what it buries, no stamp is behind.
  const settled = mergeLogbooks(logbook, logbook);
  expect(settled.shots.map((shot) => shot.id)).toEqual(logbook.shots.map((shot) => shot.id).sort());
  expect(settled.rounds).toHaveLength(logbook.rounds.length);
}

type Step = fc.AsyncCommand<Model, Real>;

/** One step: what it does to both, then both are compared. `null` from the model: nothing to act on. */
function step(name: string, act: (model: Model, real: Real) => Promise<void>): Step {
  return {
    check: () => true,
    run: async (model, real) => {
      await act(model, real);
      await agree(model, real);
    },
    toString: () => name,
  };
}

const start = (): Step =>
  step('start', async (model, { keeper }) => {
    if (model.openRound()) return;
    const round = await aRound(keeper, { course: '' });
    model.become({ rounds: withEntry(model.now.rounds, round.id, { closed: false, par: null }) }, false);
    // A round that was started stays: undo goes back to before it only in what it can take back.
    model.past = model.past.map((state) => ({
      ...state,
      rounds: withEntry(state.rounds, round.id, { closed: false, par: null }),
    }));
  });

const log = (which: number, hole: number, number: number): Step =>
  step(`log ${hole}/${number}`, async (model, { keeper, mine }) => {
    const roundId = pick([...model.now.rounds.keys()], which);
    const at = new Date(mine.clock.ms).toISOString();
    if (roundId === undefined) return;
    const outcome = await logShot(keeper, roundId, entry(number, { hole, lie: 'tee' }));
    if (outcome.kind !== 'saved') throw new Error(JSON.stringify(outcome));
    model.become({ shots: withEntry(model.now.shots, outcome.value.id, { roundId, hole, number, lie: 'tee', at }) });
  });

function onShot(
  name: string,
  which: number,
  act: (model: Model, keeper: Keeper, id: string, shot: ModelShot & { roundId: string }) => Promise<void>,
): Step {
  return step(name, async (model, { keeper }) => {
    const found = pick([...model.now.shots], which);
    if (found) await act(model, keeper, found[0], found[1]);
  });
}

const edit = (which: number, lie: Lie): Step =>
  onShot(`edit ${lie}`, which, async (model, keeper, id, shot) => {
    expect((await editShot(keeper, { id, roundId: shot.roundId }, { lie })).kind).toBe('saved');
    if (shot.lie !== lie) model.become({ shots: withEntry(model.now.shots, id, { ...shot, lie }) });
  });

const move = (which: number, hole: number, after: number): Step =>
  onShot(`move to ${hole}`, which, async (model, keeper, id, shot) => {
    const shots = model.shotsOf(shot.roundId);
    const target = pick([null, ...shots.filter((other) => other.hole === hole && other.id !== id)], after);
    const to = { hole, after: target?.id ?? null };
    const places = placesAfterMove(shots, id, to);
    expect((await moveShot(keeper, { id, roundId: shot.roundId }, to)).kind).toBe('saved');
    const changed = [...places].filter(([each, place]) => {
      const was = model.now.shots.get(each);
      return was?.hole !== place.hole || was.number !== place.number;
    });
    if (changed.length === 0) return;
    const moved = new Map(model.now.shots);
    for (const [each, place] of places) moved.set(each, { ...(moved.get(each) ?? shot), ...place });
    model.become({ shots: moved });
  });

const remove = (which: number): Step =>
  onShot('delete', which, async (model, keeper, id, shot) => {
    expect((await deleteShot(keeper, { id, roundId: shot.roundId })).kind).toBe('saved');
    model.binned.set(id, model.now);
    model.become({ shots: without(model.now.shots, id), bin: withEntry(model.now.bin, id, 'shot') });
  });

const hole = (which: number, par: number): Step =>
  step(`par ${par}`, async (model, { keeper }) => {
    const found = pick([...model.now.rounds], which);
    if (!found) return;
    expect((await setHole(keeper, found[0], 1, { par })).kind).toBe('saved');
    if (found[1].par !== par) model.become({ rounds: withEntry(model.now.rounds, found[0], { ...found[1], par }) });
  });

const close = (): Step =>
  step('close', async (model, { keeper }) => {
    const id = model.openRound();
    const round = id === undefined ? undefined : model.now.rounds.get(id);
    if (id === undefined || !round) return;
    expect((await closeRound(keeper, id)).kind).toBe('saved');
    model.become({ rounds: withEntry(model.now.rounds, id, { ...round, closed: true }) });
  });

const reopen = (which: number): Step =>
  step('reopen', async (model, { keeper }) => {
    const found = pick([...model.now.rounds], which);
    if (!found) return;
    const open = model.openRound();
    const outcome = await reopenRound(keeper, found[0]);
    expect(outcome.kind).toBe(open === undefined || open === found[0] ? 'saved' : 'refused');
    if (outcome.kind !== 'saved' || !found[1].closed) return;
    model.become({ rounds: withEntry(model.now.rounds, found[0], { ...found[1], closed: false }) });
  });

const removeRound = (which: number): Step =>
  step('delete round', async (model, { keeper }) => {
    const id = pick([...model.now.rounds.keys()], which);
    if (id === undefined) return;
    expect((await deleteRound(keeper, id)).kind).toBe('saved');
    model.binned.set(id, model.now);
    const its = [...model.now.shots].filter(([, shot]) => shot.roundId === id).map(([shot]) => shot);
    model.become({
      rounds: without(model.now.rounds, id),
      shots: without(model.now.shots, ...its),
      bin: withEntry(model.now.bin, id, 'round'),
    });
  });

const fromBin = (which: number): Step =>
  step('from the bin', async (model, { keeper }) => {
    const found = pick([...model.now.bin], which);
    if (!found) return;
    const [id, of] = found;
    const binned = (await reading(keeper, (db) => db.bin.toArray())).find((each) => each.id === id);
    if (!binned) throw new Error(`${id} is not in the bin`);
    const outcome = await restoreFromBin(keeper, binned);
    const then = model.binned.get(id);
    if (of === 'shot') {
      const shot = then?.shots.get(id);
      expect(outcome.kind).toBe(shot && model.now.rounds.has(shot.roundId) ? 'saved' : 'refused');
      if (outcome.kind !== 'saved' || !shot) return;
      model.become({ shots: withEntry(model.now.shots, id, shot), bin: without(model.now.bin, id) });
      return;
    }
    expect(outcome.kind).toBe('saved');
    const round = then?.rounds.get(id);
    if (!then || !round) throw new Error(`the model lost round ${id}`);
    const its = [...then.shots].filter(([, shot]) => shot.roundId === id);
    const closed = round.closed || model.openRound() !== undefined;
    model.become({
      rounds: withEntry(model.now.rounds, id, { ...round, closed }),
      shots: new Map([...model.now.shots, ...its]),
      bin: without(model.now.bin, id, ...its.map(([shot]) => shot)),
    });
  });

const takeBack = (): Step =>
  step('undo', async (model, { keeper }) => {
    const outcome = await undo(keeper);
    const before = model.past.at(-1);
    if (!before) {
      expect(outcome).toEqual({ kind: 'refused', why: { kind: 'nothing to undo' } });
      return;
    }
    if (outcome.kind === 'refused') {
      expect(outcome.why.kind).toBe('round open');
      expect([...before.rounds].filter(([, round]) => !round.closed).length).toBeGreaterThan(1);
      return;
    }
    expect(outcome.kind).toBe('saved');
    // What an undo takes away goes to the bin, as what a deletion takes away does.
    const bin = new Map(before.bin);
    for (const [id, of] of model.now.bin)
      if (of === 'shot' ? !before.shots.has(id) : !before.rounds.has(id)) bin.set(id, of);
    for (const id of model.now.rounds.keys()) if (!before.rounds.has(id)) bin.set(id, 'round');
    for (const [id, shot] of model.now.shots) {
      if (!before.shots.has(id) && before.rounds.has(shot.roundId)) bin.set(id, 'shot');
    }
    for (const id of bin.keys()) if (!model.now.bin.has(id)) model.binned.set(id, model.now);
    model.now = { ...before, bin };
    model.past.pop();
  });

const reload = (): Step =>
  step('reload', async (_model, real) => {
    real.keeper.close();
    real.keeper = real.mine.tab();
  });

const clock = (days: number): Step =>
  step(`clock ${days} d`, async (_model, real) => {
    real.mine.clock.ms += days * 86_400_000;
  });

/** A fault that strikes once: the action after it must be saved all the same. */
const once = (fault: Fault): Step =>
  step(`one "${fault}" ahead`, async () => {
    // Armed after the comparison of this step, which must be able to read.
    setTimeout(() => breakStore(fault, 1), 0);
    await new Promise((resolve) => setTimeout(resolve, 1));
  });

/** A log while the store refuses: unsaved and kept, then written once it is mended. */
const logUnderFault = (fault: Fault, number: number): Step =>
  step(`log under "${fault}"`, async (model, { keeper, mine }) => {
    const roundId = model.openRound();
    if (roundId === undefined) return;
    const at = new Date(mine.clock.ms).toISOString();
    breakStore(fault);
    const outcome = await logShot(keeper, roundId, entry(number, { lie: 'bare' }));
    mendStore();
    expect(outcome.kind).toBe('unsaved');
    const [kept] = keeper.unsaved.value;
    await agree(model, { keeper, mine });
    expect(await retryUnsaved(keeper)).toBe(true);
    model.become({
      shots: withEntry(model.now.shots, kept.shotId ?? '', { roundId, hole: 1, number, lie: 'bare', at }),
    });
  });

const nat = fc.nat({ max: 20 });
const holes = fc.integer({ min: 1, max: 2 });
const numbers = fc.integer({ min: 1, max: 4 });
const steps: fc.Arbitrary<Step>[] = [
  fc.constant(start()),
  fc.tuple(nat, holes, numbers).map(([which, at, number]) => log(which, at, number)),
  fc.tuple(nat, holes, numbers).map(([which, at, number]) => log(which, at, number)),
  fc.tuple(nat, fc.constantFrom<Lie>('fairway', 'bare')).map(([which, lie]) => edit(which, lie)),
  fc.tuple(nat, holes, nat).map(([which, at, after]) => move(which, at, after)),
  nat.map(remove),
  fc.tuple(nat, fc.integer({ min: 3, max: 5 })).map(([which, par]) => hole(which, par)),
  fc.constant(close()),
  nat.map(reopen),
  nat.map(removeRound),
  nat.map(fromBin),
  fc.constant(takeBack()),
  fc.constant(reload()),
  fc.constantFrom(-2, 1).map(clock),
  fc.constantFrom<Fault>('abort', 'sleep', 'server lost').map(once),
  fc
    .tuple(fc.constantFrom<Fault>('quota', 'quota at commit', 'sleep'), numbers)
    .map(([fault, number]) => logUnderFault(fault, number)),
];

test(`the logbook is a plain one in memory, over ${RUNS} runs of any actions, faults and reloads`, {
  timeout: 300_000,
}, async () => {
  await fc.assert(
    fc.asyncProperty(fc.commands(steps, { maxCommands: 40, size: 'max' }), async (commands) => {
      mendStore();
      const mine = phone();
      const real: Real = { mine, keeper: mine.tab() };
      try {
        await fc.asyncModelRun(() => ({ model: new Model(), real }), commands);
      } finally {
        mendStore();
        real.keeper.close();
      }
    }),
    { numRuns: RUNS, endOnFailure: process.env.CARRYBOOK_SHRINK !== '1' },
  );
});
