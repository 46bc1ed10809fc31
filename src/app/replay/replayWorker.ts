import type { FromReplay, ToReplay } from './messages.ts';
import { ReplayServer } from './ReplayServer.ts';

/** The little of a worker's own world that is used here; the program is otherwise typed for the page. */
interface WorkerScope {
  postMessage(message: FromReplay): void;
  onmessage: ((event: MessageEvent<ToReplay>) => void) | null;
}
const scope = self as unknown as WorkerScope;

const server = new ReplayServer((message) => scope.postMessage(message));
scope.onmessage = ({ data }) => server.hear(data);
