import type { Computations } from './computations.ts';
import type { WorkAnswer, WorkRequest } from './workRequest.ts';

/** As much of a Worker as the client uses. */
export interface WorkerLike {
  postMessage(message: unknown): void;
  addEventListener(type: 'message' | 'error' | 'messageerror', listener: (event: Event) => void): void;
  terminate(): void;
}

/** Asks for a computation by name; rejects with the computation's own error text, or when the worker crashed twice. */
export type Compute = <Name extends keyof Computations>(
  name: Name,
  ...args: Parameters<Computations[Name]>
) => Promise<ReturnType<Computations[Name]>>;

interface Pending {
  readonly request: WorkRequest;
  readonly resolve: (value: never) => void;
  readonly reject: (error: Error) => void;
  crashes: number;
}

/** How often one request may see the worker crash before it is given up: the first time it is tried again. */
const CRASHES_ALLOWED = 1;

/**
 * A client for a worker that may die at any time (a phone short of memory ends workers first). The
 * worker is started at the first request; after a crash a new one is started and each open request is
 * sent once more; a request that saw two crashes is rejected.
 *
 * @param startWorker makes a fresh worker; called again after a crash.
 */
export function createClient(startWorker: () => WorkerLike): Compute {
  const open = new Map<number, Pending>();
  let worker: WorkerLike | undefined;
  let lastId = 0;

  function settle(event: Event): void {
    const reply = (event as MessageEvent<WorkAnswer>).data;
    const pending = open.get(reply.id);
    if (!pending) return;
    open.delete(reply.id);
    if (reply.kind === 'done') pending.resolve(reply.value as never);
    else pending.reject(new Error(reply.message));
  }

  function restart(crashed: WorkerLike, event: Event): void {
    if (crashed !== worker) return;
    crashed.terminate();
    worker = undefined;
    const reason = (event as ErrorEvent).message || 'no reason given';
    for (const pending of [...open.values()]) {
      pending.crashes += 1;
      if (pending.crashes > CRASHES_ALLOWED) {
        open.delete(pending.request.id);
        pending.reject(new Error(`the computation stopped twice (${reason})`));
      } else {
        send(pending);
      }
    }
  }

  function running(): WorkerLike {
    if (worker) return worker;
    const started = startWorker();
    started.addEventListener('message', settle);
    started.addEventListener('error', (event) => restart(started, event));
    started.addEventListener('messageerror', (event) => restart(started, event));
    worker = started;
    return started;
  }

  function send(pending: Pending): void {
    try {
      running().postMessage(pending.request);
    } catch (error) {
      open.delete(pending.request.id);
      pending.reject(error instanceof Error ? error : new Error(String(error)));
    }
  }

  return (name, ...args) =>
    new Promise((resolve, reject) => {
      lastId += 1;
      const pending: Pending = { request: { id: lastId, name, args }, resolve, reject, crashes: 0 };
      open.set(lastId, pending);
      send(pending);
    });
}
