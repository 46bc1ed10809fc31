import { drivesOf } from './drivesOf.ts';
import { EvidenceDesk } from './EvidenceDesk.ts';
import type { FromWorker, ToWorker } from './messages.ts';
import { loadWeighing } from './weighing.ts';

/** The little of a worker's own world that is used here; the program is otherwise typed for the page. */
interface WorkerScope {
  postMessage(message: FromWorker): void;
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
}
const scope = self as unknown as WorkerScope;

// A message to oneself comes after all that were sent before it, and sooner than the shortest timer.
const turns = new MessageChannel();
let next: (() => void) | null = null;
turns.port1.onmessage = () => {
  const work = next;
  next = null;
  work?.();
};

const desk = new EvidenceDesk({
  load: loadWeighing,
  drive: drivesOf,
  post: (message) => scope.postMessage(message),
  nowMs: () => performance.now(),
  later: (work) => {
    next = work;
    turns.port2.postMessage(null);
  },
});
scope.onmessage = ({ data }) => desk.hear(data);
