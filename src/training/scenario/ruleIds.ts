/** Method rules of this version; each has a title and a one-line why in `text`. */
export const RULE_IDS = [
  'meter-proven',
  'pump-proven',
  'key-off-for-plug',
  'back-probed-with-pins',
  'pins-removed',
  'ohms-on-dead-circuit',
  'supply-and-ground-loaded',
  'air-port-capped',
  'clamps-hand-tight',
  'canister-hose-plugged',
  'click-three-times',
  'jumper-short-and-fused',
  'vacuum-three-times',
  'return-observed',
  'hold-watched',
  'retest-on-fitted-part',
  'bench-restored',
] as const;
export type RuleId = (typeof RULE_IDS)[number];
