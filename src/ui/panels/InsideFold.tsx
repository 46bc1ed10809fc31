import type { Signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { InsideView } from './laterPanels.ts';

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

/** Drawn by itself, so that only this part of the panel follows the unit. */
function Live({ desk }: { readonly desk: Desk }) {
  const inside = desk.inside.value;
  return inside === null ? null : <InsideView inside={inside} seen={desk.observation.value} />;
}
