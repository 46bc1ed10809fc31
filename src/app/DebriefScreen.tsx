import { useEffect, useState } from 'preact/hooks';
import { download } from '../platform/browser/download.ts';
import { say } from '../text/translate.ts';
import type { SealedScenario } from '../training/scenario/seal.ts';
import type { DebriefFacts } from '../training/score/DebriefFacts.ts';
import { Debrief } from '../ui/panels/Debrief.tsx';
import { TopBar } from '../ui/panels/TopBar.tsx';
import { type AppShop, exportStored, recordName } from './createShop.ts';
import { openFinished } from './openJob.ts';
import { SittingDesk } from './SittingDesk.ts';

interface DebriefScreenProps {
  readonly sealed: SealedScenario;
  /** Under which the finished sitting is kept. */
  readonly kept: string;
  readonly shop: AppShop;
  readonly onSettings: () => void;
}

interface ReadAgain {
  readonly desk: SittingDesk;
  readonly facts: DebriefFacts;
}

/** The debrief of a finished job, read again: its kept record is sat once more, and nothing can be done in it. */
export function DebriefScreen({ sealed, kept, shop, onSettings }: DebriefScreenProps) {
  const [read, setRead] = useState<ReadAgain | null>(null);
  useEffect(() => {
    let gone = false;
    void readAgain(sealed, kept, shop).then((made) => {
      if (!gone) setRead(made);
    });
    return () => {
      gone = true;
      setRead(null);
    };
  }, [sealed, kept, shop]);
  return (
    <>
      <TopBar shop={shop} title={sealed.card.title} onSettings={onSettings} />
      {read === null ? (
        <main class="order-page">
          {shop.trouble.value === null && <p role="status">{say('app.loading')}</p>}
        </main>
      ) : (
        <Debrief desk={read.desk} shop={shop} facts={read.facts} />
      )}
    </>
  );
}

async function readAgain(sealed: SealedScenario, kept: string, shop: AppShop): Promise<ReadAgain | null> {
  const stored = await shop.store.get(kept);
  if (stored === undefined) {
    shop.trouble.value = { key: 'troubles.record-gone', offers: [] };
    return null;
  }
  const opened = openFinished(sealed, stored);
  if (!opened.ok) {
    const key = `troubles.${opened.error.code}` as const;
    shop.trouble.value = {
      key,
      ...(opened.error.code === 'scenario-broken' ? { detail: opened.error.detail } : {}),
      offers: [{ label: 'troubles.exportRecord', run: () => exportStored(stored) }],
    };
    return null;
  }
  const { scenario, sitting } = opened.value;
  const desk = new SittingDesk(
    sitting,
    scenario,
    {
      acted: () => {},
      jumped: () => {},
      exportRecord: (record) => download(recordName(scenario.id), `${JSON.stringify(record, null, 1)}\n`),
      broken: (detail) => {
        shop.trouble.value = { key: 'troubles.unexpected', detail, offers: [] };
      },
    },
    true,
  );
  const facts = desk.debrief();
  return facts === null ? null : { desk, facts };
}
