/** Replaceable items: what a verdict names and a repair renews. */
export const ITEMS = [
  'unit',
  'feed-wire',
  'ground-wire',
  'sense-wire',
  'plug',
  'fuse',
  'key-switch',
  'battery',
  'controller',
  'canister-hose',
  'air-hose',
  'engine-hose',
  'filter',
  'filler-cap',
  'canister',
  'tank-seal',
  'purge-valve',
  'hand-pump',
  'meter-leads',
  'meter-fuses',
  'meter-battery',
  'jumper',
  'plain-lead',
] as const;
export type ItemId = (typeof ITEMS)[number];

/** Items that belong to the bench's tools, not to the truck. Renewing one is never a repair of the complaint. */
export const TOOL_ITEMS: readonly ItemId[] = [
  'hand-pump',
  'meter-leads',
  'meter-fuses',
  'meter-battery',
  'jumper',
  'plain-lead',
];

/** Things of the bench that a test takes into the hand. */
export const TEST_TOOLS = [
  'meter',
  'back-probe-pins',
  'drag-gauge',
  'jumper',
  'plain-lead',
  'test-lamp',
  'led-tester',
  'bench-supply',
  'hand-pump',
  'caps-and-plugs',
  'jar',
  'manometer',
  'smoke-machine',
  'reader',
] as const;
export type TestTool = (typeof TEST_TOOLS)[number];

/** Everything of the bench that a job may have at hand or not: those, and the known-good unit on the shelf. */
export const BENCH_TOOLS = [...TEST_TOOLS, 'known-good-unit'] as const;
export type BenchTool = (typeof BENCH_TOOLS)[number];
