import { useEffect, useState } from 'preact/hooks';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import type { ReplayDesk } from '../../ui/panels/ReplayDesk.ts';
import { openReplay } from './openReplay.ts';

/** The replay of a closed job while its debrief is shown; null until it is opened. `record` gives the closed record. */
export function useReplay(sealed: SealedScenario, record: () => SittingRecord): ReplayDesk | null {
  const [replay, setReplay] = useState<ReplayDesk | null>(null);
  // The record of a closed job does not change any more: it is read once.
  useEffect(() => {
    const running = openReplay(sealed, record());
    setReplay(running);
    return () => running.end();
  }, [sealed]);
  return replay;
}
