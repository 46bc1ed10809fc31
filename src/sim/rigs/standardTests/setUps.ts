import type { TestStep } from './StandardTest.ts';
import { across, fitOn, key, meterTo, off, onPort, PART_PLUG, pin } from './steps.ts';

/** Set-ups that tests share. Each is made from the bench as a job begins: all hoses and the plug on, key off. */
export const SET_UPS = {
  'as-found': [],
  'key-on': [key('on')],
  'plug-apart': [PART_PLUG],
  'plug-apart-key-on': [PART_PLUG, key('on')],
  'sense-watched': [pin(3), meterTo('volts-dc'), ...across('cavity-3-back', 'battery-negative'), key('on')],
  /** Unit alone: canister hose off and plugged, pump on its port, air port capped. */
  'pump-on-canister-port': [
    off('canister-hose'),
    fitOn('plug-a', 'canister-hose-end'),
    ...onPort('pump-hose', 'canister-port'),
    off('air-hose'),
    ...onPort('cap-a', 'air-port'),
  ],
  /** The same with the air port open. */
  'pump-on-canister-port-air-open': [
    off('canister-hose'),
    fitOn('plug-a', 'canister-hose-end'),
    ...onPort('pump-hose', 'canister-port'),
    off('air-hose'),
  ],
  'pump-on-engine-port': [
    off('engine-hose'),
    fitOn('plug-a', 'engine-hose-end'),
    ...onPort('pump-hose', 'engine-port'),
  ],
  /** A unit whose air port leads to its switch's side: air hose off and plugged, pump in its place. */
  'pump-on-air-port': [off('air-hose'), fitOn('plug-a', 'air-hose-end'), ...onPort('pump-hose', 'air-port')],
  /** Unit alone on the 1 L jar, the hand pump on a tee for its gauge, the other tee capped. */
  'jar-on-canister-port': [
    off('canister-hose'),
    fitOn('plug-a', 'canister-hose-end'),
    ...onPort('jar-hose', 'canister-port'),
    fitOn('pump-hose', 'jar-tee-a'),
    fitOn('cap-a', 'jar-tee-b'),
  ],
  /** Unit alone on the jar with manometer and pump, air port capped, the sense watched on the reader. */
  'manometer-on-canister-port': [
    off('canister-hose'),
    fitOn('plug-a', 'canister-hose-end'),
    ...onPort('jar-hose', 'canister-port'),
    fitOn('manometer-hose', 'jar-tee-a'),
    fitOn('pump-hose', 'jar-tee-b'),
    off('air-hose'),
    ...onPort('cap-a', 'air-port'),
    key('on'),
  ],
  /** Unit alone on the jar with the manometer, its second tee capped: for what the unit's own pump draws. */
  'manometer-alone-on-canister-port': [
    off('canister-hose'),
    fitOn('plug-a', 'canister-hose-end'),
    ...onPort('jar-hose', 'canister-port'),
    fitOn('manometer-hose', 'jar-tee-a'),
    fitOn('cap-a', 'jar-tee-b'),
  ],
  'engine-running': [key('running')],
} as const satisfies Readonly<Record<string, readonly TestStep[]>>;

export type SetUpId = keyof typeof SET_UPS;
