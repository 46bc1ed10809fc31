import { keptTables } from '../../evidence/keptTables.ts';
import { nextTask } from '../../nextTask.ts';
import { type LifeQuestion, type LifeSign, showLife } from '../../workers/life.ts';
import { NewestDesk, Stopped } from './NewestDesk.ts';
import type { NewestAsked, NewestSaid } from './newest.ts';
import { type DraftText, type ProofNews, proofSteps } from './proofSteps.ts';

/** The little of a worker's own world that is used here; the program is otherwise typed for the page. */
interface WorkerScope {
  readonly name: string;
  readonly navigator: { readonly locks?: LockManager };
  postMessage(message: NewestSaid<ProofNews> | LifeSign): void;
  onmessage: ((event: MessageEvent<NewestAsked<DraftText> | LifeQuestion>) => void) | null;
}
const scope = self as unknown as WorkerScope;
const alive = showLife(scope);

const desk = new NewestDesk<DraftText, ProofNews>({
  steps: (draft) =>
    proofSteps(draft, async (rig) => {
      const tables = await keptTables(rig);
      if (tables.ok) return tables.value;
      const { code, detail } = tables.error;
      throw new Stopped({ code: code === 'no-worker' ? 'broke' : code, detail });
    }),
  post: (message) => scope.postMessage(message),
  rest: nextTask,
});
scope.onmessage = ({ data }) => (data.kind === 'alive?' ? alive() : void desk.hear(data));
