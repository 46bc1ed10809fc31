/** Some browsers do not say when they are idle; by then the first screen stands. */
const SURELY_IDLE_MS = 2000;

/** Does a piece of work that nobody waits for, once the page is loaded and has nothing else to do. */
export function whenIdle(work: () => void): void {
  const soon = (): void => {
    if (typeof requestIdleCallback === 'undefined') setTimeout(work, SURELY_IDLE_MS);
    else requestIdleCallback(work, { timeout: SURELY_IDLE_MS });
  };
  if (document.readyState === 'complete') soon();
  else window.addEventListener('load', soon, { once: true });
}
