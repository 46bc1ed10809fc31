import type { Signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { InsideView } from '../inside/InsideView.tsx';
import type { Desk } from './Desk.ts';

interface InsideProps {
  readonly desk: Desk;
  readonly open: Signal<boolean>;
}

/** The unit cut open beside the work, behind a line of its own: for a learner who is led. */
export function InsideFold({ desk, open }: InsideProps) {
  const shown = open.value;
  useEffect(() => {
    desk.showInside(shown);
    return () => desk.showInside(false);
  }, [desk, shown]);
  return (
    <details class="inside-fold" open={shown} onToggle={(event) => (open.value = event.currentTarget.open)}>
      <summary>{say('steps.inside')}</summary>
      {shown && <Live desk={desk} />}
    </details>
  );
}

/** Drawn by itself, so that only this part of the panel follows the unit. Its drawing is fetched when it is first opened. */
function Live({ desk }: { readonly desk: Desk }) {
  const [View, setView] = useState<typeof InsideView | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    let gone = false;
    import('../inside/InsideView.tsx').then(
      (fetched) => !gone && setView(() => fetched.InsideView),
      () => !gone && setFailed(true),
    );
    return () => {
      gone = true;
    };
  }, []);
  const inside = desk.inside.value;
  if (failed) return <p role="status">{say('steps.insideFailed')}</p>;
  if (View === null || inside === null) return <p role="status">{say('steps.insideComing')}</p>;
  return <View inside={inside} seen={desk.observation.value} />;
}
