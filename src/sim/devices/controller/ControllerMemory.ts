import type { FreezeData, TroubleCode } from './troubleCodes.ts';

/** What the controller remembers with the key off. Plain JSON. */
export interface ControllerMemory {
  pending: TroubleCode[];
  stored: TroubleCode[];
  /** Cleared by passing only, never by the reader. */
  permanent: TroubleCode[];
  freeze: FreezeData[];
  lamp: boolean;
  /** Passing trips in a row since the lamp was lit. */
  passes: number;
  /** The monitor has come to a judgement since codes were last cleared. */
  complete: boolean;
}

export function freshMemory(): ControllerMemory {
  return { pending: [], stored: [], permanent: [], freeze: [], lamp: false, passes: 0, complete: false };
}
