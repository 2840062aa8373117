import type { WorkAnswer, WorkRequest } from './workRequest.ts';

/**
 * Runs one request against a set of computations and says what came of it. An error thrown by a
 * computation is an answer too: it is carried over as text.
 */
export function answer(computations: object, request: WorkRequest): WorkAnswer {
  const { id, name, args } = request;
  try {
    if (!Object.hasOwn(computations, name)) throw new RangeError(`${name} is no computation of this worker`);
    const compute = (computations as Record<string, (...args: readonly unknown[]) => unknown>)[name];
    return { id, kind: 'done', value: compute(...args) };
  } catch (error) {
    return { id, kind: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}
