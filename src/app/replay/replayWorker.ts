import { type LifeQuestion, type LifeSign, showLife } from '../workers/life.ts';
import type { FromReplay, ToReplay } from './messages.ts';
import { ReplayServer } from './ReplayServer.ts';

/** The little of a worker's own world that is used here; the program is otherwise typed for the page. */
interface WorkerScope {
  readonly name: string;
  readonly navigator: { readonly locks?: LockManager };
  postMessage(message: FromReplay | LifeSign): void;
  onmessage: ((event: MessageEvent<ToReplay | LifeQuestion>) => void) | null;
}
const scope = self as unknown as WorkerScope;

const server = new ReplayServer((message) => scope.postMessage(message));
const alive = showLife(scope);
scope.onmessage = ({ data }) => (data.kind === 'alive?' ? alive() : server.hear(data));
