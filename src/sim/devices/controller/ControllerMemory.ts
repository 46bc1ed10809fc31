import type { MonitorPhase } from './monitorPhases.ts';
import type { FreezeData, TroubleCode } from './troubleCodes.ts';

/** How the monitor's last run ended, as the reader shows it afterwards. */
export interface MonitorResult {
  readonly phase: MonitorPhase;
  /** Seconds measured in the phase that decided, and the scaled limit it was held against; null where there is none. */
  readonly seconds: number;
  readonly limitSeconds: number | null;
}

/** What the controller remembers with the key off. Plain JSON. */
export interface ControllerMemory {
  /** Failed in this key cycle or in the one before. */
  pending: TroubleCode[];
  stored: TroubleCode[];
  /** Cleared by passing only, never by the reader. */
  permanent: TroubleCode[];
  freeze: FreezeData[];
  lamp: boolean;
  /** Passing trips in a row since the lamp was lit or a code last failed. */
  passes: number;
  /** The monitor has come to a judgement since codes were last cleared. */
  complete: boolean;
  /** Failed in the present key cycle. */
  failedNow: TroubleCode[];
  /** Drive cycles without a failure since the lamp went out: stored codes are dropped after so many. */
  cleanDrives: number;
  /** The last run since codes were last cleared; null before it. */
  result: MonitorResult | null;
}

export function freshMemory(): ControllerMemory {
  return {
    pending: [],
    stored: [],
    permanent: [],
    freeze: [],
    lamp: false,
    passes: 0,
    complete: false,
    failedNow: [],
    cleanDrives: 0,
    result: null,
  };
}
