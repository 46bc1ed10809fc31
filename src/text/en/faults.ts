/** What was wrong, as the debrief says it. */
export const faults = {
  faults: {
    'winding-open': 'The solenoid winding is open.',
    'plunger-stuck': 'The solenoid plunger is stuck at rest.',
    'plunger-sticky': 'The solenoid plunger sticks on some trials.',
    'switch-stuck-open': 'The vacuum switch never closes.',
    'switch-stuck-closed': 'The vacuum switch never opens.',
    'capsule-torn': 'The capsule of the vacuum switch is torn and leaks.',
    'vent-seat-leaking': 'The vent seat does not seal.',
    'feed-open': 'The feed wire is open.',
    'ground-resistance': 'The ground wire has too much resistance.',
    'sense-open': 'The sense wire is open.',
    'sense-to-ground': 'The sense wire is shorted to ground.',
    'fuse-blown': 'The fuse has blown.',
    'hand-pump-seal-leaking': 'The seal of the hand pump leaks.',
    'meter-lead-open': 'A meter lead is open inside.',
  },
  noFault: 'Nothing was wrong here.',
  unnamedFault: 'A fault this version has no sentence for ({{fault}}).',
} as const;
