import { secondsToTicks, type Tick } from '../../../base/ticks.ts';
import { canisterLineOpen, isOff } from '../setups.ts';
import { isStroke } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** Time a hand may take from pulling the hose to plugging it. Common practice, no source. */
const GRACE_TICKS = secondsToTicks(60);

/** The canister hose, once off, got a plug within a minute and before anything else was tried. */
export const canisterHosePlugged: MethodRule = ({ moments, start }) => {
  let openSince: Tick | null = null;
  let wasOff = isOff(start, 'canister-hose');
  const off: Tick[] = [];
  const broken: Tick[] = [];
  for (const moment of moments) {
    const { tick, action, seen } = moment;
    const nowOff = isOff(seen, 'canister-hose');
    if (nowOff && !wasOff) off.push(tick);
    wasOff = nowOff;
    if (openSince !== null) {
      const tries =
        isStroke(moment) || action?.kind === 'switch-jumper' || action?.kind === 'command-solenoid';
      if (tries || tick - openSince > GRACE_TICKS) {
        broken.push(openSince);
        // One miss for each time the hose was left open, not one for each action after it.
        openSince = null;
        if (canisterLineOpen(seen)) continue;
      }
    }
    if (!canisterLineOpen(seen)) openSince = null;
    else if (action !== null && !canisterLineOpen(moment.before)) openSince = tick;
  }
  // A line that stands open when the job is closed was never plugged, however short a time ago it was opened.
  if (openSince !== null) broken.push(openSince);
  if (broken.length > 0) return missed(broken);
  return off.length > 0 ? kept(off) : NO_OCCASION;
};
