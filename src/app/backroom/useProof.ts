import { effect } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { DraftDesk } from './DraftDesk.ts';
import { ProofClient } from './proof/ProofClient.ts';
import { ReadingsClient } from './proof/ReadingsClient.ts';
import { readBenchOf } from './readBenchOf.ts';

interface Proving {
  readonly proof: ProofClient;
  readonly readings: ReadingsClient;
}

/** Has the draft proved, and its faults read, as it is written. */
export function useProof(desk: DraftDesk): Proving {
  const proving = useMemo<Proving>(() => ({ proof: new ProofClient(), readings: new ReadingsClient() }), []);
  useEffect(() => {
    let bench = '';
    const stop = effect(() => {
      const { form } = desk.draft.value;
      proving.proof.prove(form.text, '');
      const wanted = readBenchOf(form);
      const now = JSON.stringify(wanted);
      if (wanted === null || now === bench) return;
      bench = now;
      proving.readings.read(wanted);
    });
    return () => {
      stop();
      proving.proof.end();
      proving.readings.end();
    };
  }, [desk, proving]);
  return proving;
}
