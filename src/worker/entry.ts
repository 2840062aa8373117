import { answer } from './answer.ts';
import { computations } from './computations.ts';
import type { WorkRequest } from './workRequest.ts';

declare const self: DedicatedWorkerGlobalScope;

self.addEventListener('message', (event: MessageEvent<WorkRequest>) => {
  self.postMessage(answer(computations, event.data));
});
