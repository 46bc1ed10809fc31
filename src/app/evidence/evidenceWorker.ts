import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { nextTask } from '../nextTask.ts';
import { type LifeQuestion, type LifeSign, showLife } from '../workers/life.ts';
import type { Debriefing } from './debriefing.ts';
import { drivesOf } from './drivesOf.ts';
import { EvidenceDesk } from './EvidenceDesk.ts';
import { fetchDebriefing } from './fetchDebriefing.ts';
import { fetchWeighing } from './fetchWeighing.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** The little of a worker's own world that is used here; the program is otherwise typed for the page. */
interface WorkerScope {
  readonly name: string;
  readonly navigator: { readonly locks?: LockManager };
  postMessage(message: FromWorker | LifeSign): void;
  onmessage: ((event: MessageEvent<ToWorker | LifeQuestion>) => void) | null;
}
const scope = self as unknown as WorkerScope;
const alive = showLife(scope);

let debriefing: Debriefing | null = null;
const fetchedDebriefing = async (): Promise<Debriefing> => {
  debriefing = await fetchDebriefing();
  return debriefing;
};

let stand = (): void => {};
/** The bench stands, or something is to be weighed. Before that it is still being stood up, and nothing shall be fetched beside it. */
const stands = new Promise<void>((resolve) => {
  stand = resolve;
});
let work = (): void => {};
/** Someone works at the bench. */
const atWork = new Promise<void>((resolve) => {
  work = resolve;
});

let name = (_rig: RigId | undefined): void => {};
/** The rig of the job, which the first thing told of it says. */
const named = new Promise<RigId | undefined>((resolve) => {
  name = resolve;
});

const desk = new EvidenceDesk({
  load: async () => {
    await stands;
    const { loadWeighing } = await fetchWeighing();
    const parts = { here: () => debriefing, fetch: () => atWork.then(fetchedDebriefing) };
    return loadWeighing(parts, await named);
  },
  drive: drivesOf,
  post: (message) => scope.postMessage(message),
  nowMs: () => performance.now(),
  later: (work) => void nextTask().then(work),
});
/** What is told after a question waits with it for what it is answered with, so that order is kept. */
let waiting: ToWorker[] | null = null;
scope.onmessage = ({ data }) => {
  if (data.kind === 'alive?') return alive();
  if (data.kind === 'ahead') return stand();
  if ('sealed' in data) name(data.sealed.card.rig);
  if (isToBeWeighed(data)) {
    stand();
    work();
  }
  if (waiting !== null) {
    waiting.push(data);
    return;
  }
  if (debriefing !== null || (data.kind !== 'advise' && data.kind !== 'debrief')) return desk.hear(data);
  waiting = [data];
  fetchedDebriefing().then(
    () => {
      for (const message of waiting ?? []) desk.hear(message);
      waiting = null;
    },
    (error: unknown) => scope.postMessage({ kind: 'failed', code: 'no-tables', detail: String(error) }),
  );
};

function isToBeWeighed(told: ToWorker): boolean {
  switch (told.kind) {
    case 'acted':
      return told.timed.action.kind !== 'accept-job';
    case 'open':
      return told.record.actions.some(({ action }) => action.kind !== 'accept-job');
    case 'advise':
    case 'debrief':
      return true;
    default:
      return false;
  }
}
