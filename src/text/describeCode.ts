import { has, say } from './translate.ts';

/** Generic text of a trouble code, or a sentence that there is none. */
export function describeCode(code: string): string {
  const key = `codes.${code}`;
  return has(key) ? say(key) : say('unknownCode');
}

/** What a fault of the catalogue is called in the debrief; `null` is a sound vehicle. */
export function describeFault(fault: string | null): string {
  if (fault === null) return say('noFault');
  const key = `faults.${fault}`;
  return has(key) ? say(key) : say('unnamedFault', { fault });
}
