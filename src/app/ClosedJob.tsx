import { useEffect, useState } from 'preact/hooks';
import { say } from '../text/translate.ts';
import type { SealedScenario } from '../training/scenario/seal.ts';
import type { DebriefFacts } from '../training/score/DebriefFacts.ts';
import { Debrief } from '../ui/panels/Debrief.tsx';
import type { Shop } from '../ui/panels/Shop.ts';
import type { EvidenceFailure } from './evidence/messages.ts';
import { useReplay } from './replay/useReplay.ts';
import type { SittingDesk } from './SittingDesk.ts';

/** Work that takes no longer shows no bar. */
const BAR_AFTER_MS = 1000;

interface ClosedJobProps {
  readonly sealed: SealedScenario;
  readonly desk: SittingDesk;
  readonly shop: Shop;
}

/** A closed job: its debrief, or what stands in its place while that is worked out, or cannot be. */
export function ClosedJob(props: ClosedJobProps) {
  const worth = props.desk.evidence.worth.value;
  switch (worth.kind) {
    case 'known':
      return <WorkedOut {...props} facts={worth.facts} />;
    case 'failed':
      return <NotWorkedOut {...props} failure={worth.failure} />;
    case 'not-asked':
    case 'working':
      return <WorkingOut />;
  }
}

function WorkedOut({ sealed, desk, shop, facts }: ClosedJobProps & { readonly facts: DebriefFacts }) {
  const replay = useReplay(sealed, () => desk.record());
  return <Debrief desk={desk} shop={shop} facts={facts} replay={replay} />;
}

function WorkingOut() {
  const [bar, setBar] = useState(false);
  useEffect(() => {
    const later = setTimeout(() => setBar(true), BAR_AFTER_MS);
    return () => clearTimeout(later);
  }, []);
  return (
    <main class="order-page">
      <section class="sheet working-out">
        <p class="quiet" role="status">
          {say('evidence.workingOut')}
        </p>
        {bar && <progress aria-label={say('evidence.working')} />}
      </section>
    </main>
  );
}

function NotWorkedOut({ desk, shop, failure }: ClosedJobProps & { readonly failure: EvidenceFailure }) {
  return (
    <main class="order-page">
      <section class="sheet" role="alert">
        <h1>{say('evidence.notWorkedOut')}</h1>
        <p>{say(`evidence.failures.${failure.code}`, { detail: failure.detail })}</p>
        <p>{say('evidence.closedAndKept')}</p>
        <div class="dialog-foot">
          <button type="button" onClick={() => shop.toBoard()}>
            {say('app.back')}
          </button>
          <button type="button" onClick={() => desk.exportRecord()}>
            {say('troubles.exportRecord')}
          </button>
          {failure.code === 'other-rig' ? (
            <button type="button" class="act" onClick={() => location.reload()}>
              {say('evidence.reload')}
            </button>
          ) : (
            <button type="button" class="act" onClick={() => desk.evidence.workOut()}>
              {say('evidence.again')}
            </button>
          )}
        </div>
      </section>
    </main>
  );
}
