/** A short valid scenario file; tests change one thing in it. */
export const SCENARIO_TEXT = `format: 1
id: short-job
title: A short job
summary: One page of work for tests.
mode: practice
level: 1
minutes: 20
aims:
  - Say what the readings show.
work-order:
  number: T-100
  vehicle: Truck 14, invented
  complaint: The lamp is on.
  history:
    - Filler cap renewed.
  codes:
    - code: P0456
      status: stored
  cautions:
    - Key off before the plug is parted.
bench:
  ambient-celsius: 20
  altitude-metres: 0
  fuel-percent: 50
seed: short-job
drives:
  cycles: 0
  refuelled: false
faults:
  - fault: capsule-torn
    severity: 0.5
rules:
  off: []
remark: Nothing more to say.
`;
