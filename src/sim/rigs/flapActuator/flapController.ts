import type { ControllerPlan } from '../../devices/controller/ControllerPlan.ts';
import type { MonitorLimits } from '../../devices/controller/monitorLimits.ts';

/** Commanded on with the engine running, the flap is drawn within this; let go, it is back within this. */
const DRAWN_SECONDS = 3;
const BACK_SECONDS = 3;
/** And it stays drawn for as long as the controller looks. */
const HELD_SECONDS = 4;

/** The flap does not hang on the tank: the same at every fuel level. */
const LIMITS: MonitorLimits = {
  tripSeconds: DRAWN_SECONDS,
  smallSeconds: HELD_SECONDS,
  passSeconds: HELD_SECONDS,
  longestHoldSeconds: HELD_SECONDS,
  leastStrokes: 0,
  ventSeconds: BACK_SECONDS,
};

/** Once in a drive the controller draws the flap, holds it and lets it go, and watches the position switch. */
export const FLAP_CONTROLLER: ControllerPlan = {
  circuits: {
    feedOpen: 'P2008',
    feedLow: 'P2009',
    feedHigh: 'P2010',
    senseHigh: 'P2017',
    senseImplausible: 'P2014',
  },
  monitor: {
    draws: 'held',
    limits: () => LIMITS,
    // A steady cruise is enough: nothing is timed that a cold or a full tank could falsify.
    mayRun: ({ cruised }) => cruised,
    codes: {
      erratic: 'P2018',
      closedAtRest: 'P2016',
      drawnTooSoon: 'P2015',
      notDrawn: 'P2004',
      lostAtOnce: 'P2015',
      lostSoon: 'P2015',
      lostEarly: 'P2015',
      notVented: 'P2006',
    },
    judgements: ['P2004', 'P2006', 'P2015'],
    afterFilling: null,
  },
};
