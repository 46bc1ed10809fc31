/**
 * What a worker that lives says, beside its work: when it begins, when it is asked, and once it holds the lock of its own name.
 * That lock is free again when it dies, however it does.
 */
export interface LifeSign {
  readonly kind: 'alive';
  readonly holdsLock: boolean;
}

export interface LifeQuestion {
  readonly kind: 'alive?';
}

/** The little of a worker's own world that is used here; the program is otherwise typed for the page. */
interface LivingScope {
  readonly name: string;
  readonly navigator: { readonly locks?: LockManager };
  postMessage(sign: LifeSign): void;
}

/** In the worker: says that it lives; gives what answers the question whether it does. */
export function showLife(scope: LivingScope): () => void {
  let holdsLock = false;
  const say = (): void => scope.postMessage({ kind: 'alive', holdsLock });
  say();
  scope.navigator.locks
    ?.request(scope.name, () => {
      holdsLock = true;
      say();
      return new Promise(() => {});
    })
    // Without it the page goes on asking.
    .catch(() => {});
  return say;
}
