import { nextTask } from '../nextTask.ts';
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

const desk = new EvidenceDesk({
  load: loadWeighing,
  drive: drivesOf,
  post: (message) => scope.postMessage(message),
  nowMs: () => performance.now(),
  later: (work) => void nextTask().then(work),
});
scope.onmessage = ({ data }) => desk.hear(data);
