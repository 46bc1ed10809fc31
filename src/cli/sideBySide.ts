import { type ChildProcess, fork } from 'node:child_process';
import { availableParallelism } from 'node:os';

/** More processes than this want more memory than they save time. */
const MOST_PROCESSES = 4;

/** What a process says of its task: `end` is its last word, all else is news. */
export interface Hearing<Message> {
  readonly hear: (message: Message) => void;
  readonly isLast: (message: Message) => boolean;
  /** Told the last word of each task, null where the process ended early; true ends the whole work after what is in hand. */
  readonly ended?: (message: Message | null) => boolean;
}

/**
 * Works tasks in processes of their own, side by side as far as the machine allows. `script` is the module such a process
 * runs: it is sent one task after the other, until the line is closed. Gives the last message of each task in the order of
 * the tasks; null where the process ended early, or the task was not come to.
 */
export async function sideBySide<Task extends object, Message>(
  script: URL,
  tasks: readonly Task[],
  { hear, isLast, ended = () => false }: Hearing<Message>,
): Promise<readonly (Message | null)[]> {
  const found: (Message | null)[] = tasks.map(() => null);
  let next = 0;
  let over = false;
  const hand = async (): Promise<void> => {
    const child = fork(script);
    for (let t = next++; t < tasks.length && !over; t = next++) {
      const message = await worked(child, tasks[t] as Task, hear, isLast);
      found[t] = message;
      over = ended(message) || over;
    }
    if (child.connected) child.disconnect();
  };
  const hands = Math.min(tasks.length, MOST_PROCESSES, availableParallelism());
  await Promise.all(Array.from({ length: hands }, hand));
  return found;
}

function worked<Message>(
  child: ChildProcess,
  task: object,
  hear: (message: Message) => void,
  isLast: (message: Message) => boolean,
): Promise<Message | null> {
  return new Promise((resolve) => {
    const end = (found: Message | null): void => {
      child.off('message', listen);
      child.off('close', broken);
      resolve(found);
    };
    const broken = (): void => end(null);
    const listen = (message: Message): void => {
      if (isLast(message)) end(message);
      else hear(message);
    };
    child.on('message', listen);
    child.on('close', broken);
    if (child.connected) child.send(task);
    else broken();
  });
}
