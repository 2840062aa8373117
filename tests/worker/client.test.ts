import { expect, test } from 'vitest';
import { answer } from '../../src/worker/answer.ts';
import { createClient, type WorkerLike } from '../../src/worker/client.ts';
import type { WorkRequest } from '../../src/worker/workRequest.ts';

const computations = {
  readFile: (text: string) => ({ read: text }),
  composeBook: () => {
    throw new RangeError('140 m is no day');
  },
};

type Listener = (event: Event) => void;

/** A worker in the same thread: crashes on the first `crashes` requests it is sent, answers the others out of order. */
class FakeWorker implements WorkerLike {
  readonly listeners: Record<string, Listener[]> = {};
  isTerminated = false;

  readonly plan: { crashes: number };

  constructor(plan: { crashes: number }) {
    this.plan = plan;
  }

  addEventListener(type: string, listener: Listener): void {
    this.listeners[type] = [...(this.listeners[type] ?? []), listener];
  }

  postMessage(message: unknown): void {
    const { id, name, args } = structuredClone(message) as WorkRequest;
    const isCrash = this.plan.crashes > 0;
    if (isCrash) this.plan.crashes -= 1;
    const tell = () => {
      const event = isCrash ? { message: 'out of memory' } : { data: answer(computations, { id, name, args }) };
      for (const listener of this.listeners[isCrash ? 'error' : 'message'] ?? []) listener(event as unknown as Event);
    };
    setTimeout(tell, id % 2 === 1 ? 4 : 1);
  }

  terminate(): void {
    this.isTerminated = true;
  }
}

function started(crashes = 0) {
  const workers: FakeWorker[] = [];
  const plan = { crashes };
  const compute = createClient(() => {
    const worker = new FakeWorker(plan);
    workers.push(worker);
    return worker;
  });
  return { compute, workers };
}

test('answers find their way back to the question, in any order, from one worker', async () => {
  const { compute, workers } = started();
  expect(workers).toHaveLength(0);
  const answers = await Promise.all(['a', 'b', 'c'].map((text) => compute('readFile', text)));
  expect(answers).toEqual([{ read: 'a' }, { read: 'b' }, { read: 'c' }]);
  expect(workers).toHaveLength(1);
});

test('an error inside a computation comes over as its text, and the worker lives on', async () => {
  const { compute, workers } = started();
  await expect(compute('composeBook', {} as never, '')).rejects.toThrow('140 m is no day');
  expect(await compute('readFile', 'after')).toEqual({ read: 'after' });
  expect(workers).toHaveLength(1);
});

test('a crash starts a new worker and asks once more', async () => {
  const { compute, workers } = started(1);
  expect(await compute('readFile', 'again')).toEqual({ read: 'again' });
  expect(workers.map((worker) => worker.isTerminated)).toEqual([true, false]);
});

test('two crashes give a request up with the reason, and the next one works', async () => {
  const { compute, workers } = started(2);
  await expect(compute('readFile', 'lost')).rejects.toThrow('the computation stopped twice (out of memory)');
  expect(await compute('readFile', 'next')).toEqual({ read: 'next' });
  expect(workers).toHaveLength(3);
});

test('a worker that cannot even start is an error of the request', async () => {
  const compute = createClient(() => {
    throw new TypeError('no workers here');
  });
  await expect(compute('readFile', '')).rejects.toThrow('no workers here');
});

test('a name that is no computation is refused, inherited ones too', () => {
  expect(answer(computations, { id: 1, name: 'toString', args: [] })).toEqual({
    id: 1,
    kind: 'failed',
    message: 'toString is no computation of this worker',
  });
});
