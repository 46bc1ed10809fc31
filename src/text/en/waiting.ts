/** Letting time pass, and what the bench tells by itself. */
export const waiting = {
  waiting: {
    label: 'Waiting',
    ten: 'Wait 10 s',
    steady: 'Until steady',
    steadyName: 'Until steady: wait for the instruments',
    waited: '{{seconds}} s went by.',
    steadyNow: 'Steady after {{seconds}} s.',
    stillMoving: 'Still moving after {{seconds}} s.',
  },
  told: {
    lampLit: 'The test lamp lights.',
    lampGlows: 'The test lamp glows.',
    lampDark: 'The test lamp is dark.',
    ledForward: 'The LED tester lights, tip positive.',
    ledReverse: 'The LED tester lights, clip positive.',
    ledDark: 'The LED tester is dark.',
    smokeAt: 'Smoke comes out at {{places}}.',
    smokeGone: 'No more smoke to be seen.',
    limiting: 'The bench supply limits its current.',
    meterBattery: 'The meter shows a low battery.',
  },
} as const;
