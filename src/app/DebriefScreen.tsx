import { effect } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { download } from '../platform/browser/download.ts';
import { say } from '../text/translate.ts';
import type { SealedScenario } from '../training/scenario/seal.ts';
import { NotOpened } from '../ui/panels/NotOpened.tsx';
import { TopBar } from '../ui/panels/TopBar.tsx';
import { ClosedJob } from './ClosedJob.tsx';
import type { AppShop } from './createShop.ts';
import { EvidenceClient } from './evidence/EvidenceClient.ts';
import { workerLine } from './evidence/EvidenceLine.ts';
import { openDriven } from './evidence/openDriven.ts';
import { exportStored, recordName } from './exportStored.ts';
import { keepFacts } from './facts/keptFacts.ts';
import { readFacts } from './facts/readFacts.ts';
import { weighingVersion } from './facts/weighingVersion.ts';
import { finished } from './openJob.ts';
import { speakOf } from './rigWords.ts';
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
  end(): void;
}

/** The debrief of a finished job, read again: its kept record is sat once more, and nothing can be done in it. */
export function DebriefScreen({ sealed, kept, shop, onSettings }: DebriefScreenProps) {
  // Null when it cannot be read.
  const [read, setRead] = useState<ReadAgain | 'coming' | null>('coming');
  useEffect(() => {
    let gone = false;
    let reading: ReadAgain | null = null;
    void readAgain(sealed, kept, shop).then((made) => {
      if (gone) return made?.end();
      reading = made;
      setRead(made);
    });
    return () => {
      gone = true;
      reading?.end();
      setRead('coming');
    };
  }, [sealed, kept, shop]);
  return (
    <>
      <TopBar shop={shop} title={sealed.card.title} onSettings={onSettings} />
      {read === null ? (
        <NotOpened shop={shop} />
      ) : read === 'coming' ? (
        <main class="order-page">
          <p role="status">{say('app.loading')}</p>
        </main>
      ) : (
        <ClosedJob sealed={sealed} desk={read.desk} shop={shop} />
      )}
    </>
  );
}

async function readAgain(sealed: SealedScenario, kept: string, shop: AppShop): Promise<ReadAgain | null> {
  await speakOf(sealed.card.rig);
  const stored = await shop.store.get(kept);
  if (stored === undefined) {
    shop.trouble.value = { key: 'troubles.record-gone', offers: [] };
    return null;
  }
  const evidence = new EvidenceClient({
    sealed,
    openLine: workerLine,
    // A debrief that cannot be worked out says so itself.
    failed: () => {},
  });
  const opened = finished(await openDriven(evidence, sealed, stored, ''));
  if (!opened.ok) {
    evidence.end();
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
    evidence,
    {
      acted: () => {},
      jumped: () => {},
      exportRecord: (record) => download(recordName(scenario.id), `${JSON.stringify(record, null, 1)}\n`),
    },
    true,
  );
  const known =
    weighingVersion === null ? null : readFacts(stored.facts ?? null, sitting.record(), weighingVersion);
  const keepWorth = effect(() => {
    const facts = desk.facts.value;
    if (facts === null || known !== null) return;
    const kept = weighingVersion === null ? null : keepFacts(facts, sitting.record(), weighingVersion);
    // What was kept with a score keeps it: the record claims it.
    const claimed = stored.score === null ? { score: facts.score.total, record: desk.record() } : {};
    void shop.store.put({ ...stored, ...claimed, facts: kept }).then(shop.refresh);
  });
  if (known !== null) evidence.recall(known);
  else {
    evidence.follow(() => sitting.record());
    evidence.workOut();
  }
  return {
    desk,
    end: () => {
      void speakOf(undefined);
      keepWorth();
      evidence.end();
    },
  };
}
