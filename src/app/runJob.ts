import { effect, type ReadonlySignal } from '@preact/signals';
import { download } from '../platform/browser/download.ts';
import { recallOpened, rememberOpened } from '../platform/browser/openedService.ts';
import type { KeptFacts } from '../platform/browser/StoredSitting.ts';
import type { SealedScenario } from '../training/scenario/seal.ts';
import { fetchLater } from '../ui/panels/later.tsx';
import type { Trouble } from '../ui/panels/Shop.ts';
import type { Voices } from '../ui/sound/Voices.ts';
import { AheadOfUse } from './AheadOfUse.ts';
import type { AppShop } from './createShop.ts';
import { EvidenceClient } from './evidence/EvidenceClient.ts';
import { workerLine } from './evidence/EvidenceLine.ts';
import { evidenceTrouble } from './evidence/evidenceTrouble.ts';
import { openDriven } from './evidence/openDriven.ts';
import { exportStored, recordName } from './exportStored.ts';
import { FrameLoop, pageFrames } from './FrameLoop.ts';
import { keepFacts } from './facts/keptFacts.ts';
import { weighingVersion } from './facts/weighingVersion.ts';
import { holdJob } from './holdJob.ts';
import { freshSeed } from './openJob.ts';
import { speakOf } from './rigWords.ts';
import { SittingDesk } from './SittingDesk.ts';
import { SittingKeeper } from './SittingKeeper.ts';
import { Workbench } from './Workbench.ts';
import { whenIdle } from './whenIdle.ts';

interface JobParts {
  /** Of the job on the board, and of its kept sitting. */
  readonly id: string;
  readonly sealed: SealedScenario;
  readonly shop: AppShop;
  readonly voices: Voices;
  readonly reducedMotion: ReadonlySignal<boolean>;
  openReader(byKeys: boolean): void;
  openShortcuts(): void;
}

/** A job that runs: its desk, its bench, and the way to end it. */
export interface RunningJob {
  readonly desk: SittingDesk;
  readonly bench: Workbench;
  readonly onTrouble: (trouble: 'context-lost' | 'no-graphics') => void;
  end(): void;
}

/** Opens a job and sets time going. Null when it cannot be opened; the trouble is shown then. */
export async function runJob(parts: JobParts): Promise<RunningJob | null> {
  const { id, sealed, shop } = parts;
  const letGo = await holdJob(id);
  if (letGo === null) {
    shop.trouble.value = { key: 'troubles.open-elsewhere', offers: [] };
    return null;
  }
  await speakOf(sealed.card.rig);
  const stored = await shop.store.get(id);
  let unweighed: Trouble | null = null;
  const evidence: EvidenceClient = new EvidenceClient({
    sealed,
    openLine: workerLine,
    failed: (failure) => {
      unweighed = evidenceTrouble(failure, () => {
        shop.trouble.value = null;
        evidence.open();
      });
      shop.trouble.value = unweighed;
    },
  });
  const opened = await openDriven(evidence, sealed, stored, freshSeed(sealed));
  if (!opened.ok) {
    evidence.end();
    letGo();
    shop.trouble.value = troubleOpening(
      opened.error,
      parts,
      () => stored !== undefined && exportStored(stored),
    );
    return null;
  }
  const { sitting } = opened.value;
  const desk: SittingDesk = new SittingDesk(
    sitting,
    evidence,
    {
      acted: ({ action }) => {
        keeper.acted(action.kind, sitting.tick);
        if (action.kind === 'close-job') void keeper.idle().then(shop.refresh);
      },
      // What a jump took to work out is no time of the sitting.
      jumped: () => loop.pause(),
      exportRecord: (record) => download(recordName(sealed.card.id), `${JSON.stringify(record, null, 1)}\n`),
    },
    recallOpened(id),
  );
  let kept: KeptFacts | null = null;
  const keeper = new SittingKeeper(
    shop.store,
    {
      scenario: id,
      record: () => desk.record(),
      closed: () => desk.phase.peek() === 'closed',
      score: () => desk.facts.peek()?.score.total ?? null,
      facts: () => kept,
    },
    () => Date.now(),
  );
  const bench = new Workbench({ ...parts, desk, settings: shop.settings });
  const ahead = new AheadOfUse(() =>
    whenIdle(() => {
      evidence.ahead();
      parts.voices.fetchRest();
      void fetchLater();
    }),
  );
  const loop: FrameLoop = new FrameLoop(pageFrames, (ticks, seconds) => {
    desk.pass(ticks);
    keeper.passed(sitting.tick);
    bench.frame(seconds);
    ahead.frame(bench.standing);
  });
  const onHide = (): void => {
    loop.pause();
    if (desk.phase.peek() !== 'closed') keeper.save();
  };
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', onHide);
  const forget = effect(() => {
    if (desk.functionsKnown.value) rememberOpened(id);
  });
  const keepScore = effect(() => {
    const facts = desk.facts.value;
    if (facts === null) return;
    if (weighingVersion !== null) kept = keepFacts(facts, sitting.record(), weighingVersion);
    keeper.save();
    void keeper.idle().then(shop.refresh);
  });
  const closed = desk.phase.peek() === 'closed';
  const known =
    closed && weighingVersion !== null
      ? (await import('./facts/readFacts.ts')).readFacts(stored?.facts, sitting.record(), weighingVersion)
      : null;
  if (known !== null) evidence.recall(known);
  else evidence.follow(() => sitting.record());
  // The page was closed on a closed job before its score was known.
  if (closed && known === null) evidence.workOut();
  loop.start();
  // The drawing is fetched while the work order is read.
  void import('../ui/scene/createScene.ts').catch(() => {});
  return {
    desk,
    bench,
    onTrouble: (trouble) => {
      shop.trouble.value = { key: `troubles.${trouble}`, offers: [] };
    },
    end: () => {
      void speakOf(undefined);
      loop.stop();
      evidence.end();
      // What was said of this job is of no use on the board.
      if (unweighed !== null && shop.trouble.peek() === unweighed) shop.trouble.value = null;
      forget();
      keepScore();
      document.removeEventListener('visibilitychange', onHide);
      window.removeEventListener('pagehide', onHide);
      if (desk.phase.peek() !== 'closed') keeper.save();
      void keeper.idle().then(() => {
        letGo();
        return shop.refresh();
      });
    },
  };
}

function troubleOpening(
  problem: { readonly code: string; readonly detail?: string },
  { shop, id }: JobParts,
  exportRecord: () => void,
): Trouble {
  if (problem.code === 'scenario-broken') {
    return { key: 'troubles.scenario-broken', detail: problem.detail ?? '', offers: [] };
  }
  if (problem.code === 'record-newer') {
    return {
      key: 'troubles.record-newer',
      offers: [
        { label: 'troubles.reload', run: () => location.reload() },
        { label: 'troubles.exportRecord', run: exportRecord },
      ],
    };
  }
  return {
    key: problem.code === 'record-changed' ? 'troubles.record-changed' : 'troubles.record-damaged',
    offers: [
      { label: 'troubles.exportRecord', run: exportRecord },
      {
        label: 'troubles.startAnew',
        run: () => {
          shop.trouble.value = null;
          void shop.startAnew(id).then(() => location.reload());
        },
      },
    ],
  };
}
