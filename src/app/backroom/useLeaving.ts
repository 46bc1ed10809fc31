import { useEffect } from 'preact/hooks';
import type { DraftDesk } from './DraftDesk.ts';

/** Whatever way the page goes, nothing is lost by it; where the browser keeps nothing, it asks first. */
export function useLeaving(desk: DraftDesk): void {
  useEffect(() => {
    const leave = (): void => desk.leave();
    const ask = (event: BeforeUnloadEvent): void => {
      if (desk.keeping.peek() === 'not-kept' && desk.undoNext.peek() !== null) event.preventDefault();
    };
    window.addEventListener('pagehide', leave);
    window.addEventListener('beforeunload', ask);
    return () => {
      window.removeEventListener('pagehide', leave);
      window.removeEventListener('beforeunload', ask);
      desk.end();
    };
  }, [desk]);
}
