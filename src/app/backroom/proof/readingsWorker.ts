import type { ReadBench, TestReadings } from '../../../training/proof/FaultReadings.ts';
import { nextTask } from '../../nextTask.ts';
import { type LifeQuestion, type LifeSign, showLife } from '../../workers/life.ts';
import { NewestDesk } from './NewestDesk.ts';
import type { NewestAsked, NewestSaid } from './newest.ts';
import { createReader } from './readingSteps.ts';

/** The little of a worker's own world that is used here; the program is otherwise typed for the page. */
interface WorkerScope {
  readonly name: string;
  readonly navigator: { readonly locks?: LockManager };
  postMessage(message: NewestSaid<TestReadings | null> | LifeSign): void;
  onmessage: ((event: MessageEvent<NewestAsked<ReadBench> | LifeQuestion>) => void) | null;
}
const scope = self as unknown as WorkerScope;
const alive = showLife(scope);

const desk = new NewestDesk<ReadBench, TestReadings | null>({
  steps: createReader(),
  post: (message) => scope.postMessage(message),
  rest: nextTask,
});
scope.onmessage = ({ data }) => (data.kind === 'alive?' ? alive() : void desk.hear(data));
