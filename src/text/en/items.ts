/** What a verdict may name, and what each costs to renew is the debrief's business, not this file's. */
export const items = {
  items: {
    unit: 'the unit (leak detection pump)',
    'feed-wire': 'feed wire, cavity 1',
    'ground-wire': 'ground wire, cavity 2',
    'sense-wire': 'sense wire, cavity 3',
    fuse: 'fuse',
    'key-switch': 'key switch',
    battery: 'battery',
    controller: 'controller',
    'canister-hose': 'canister hose',
    'air-hose': 'air hose',
    'engine-hose': 'engine vacuum hose',
    'hand-pump': 'hand pump (tool)',
    'meter-leads': 'meter leads (tool)',
    'nothing-wrong': 'nothing wrong here',
  },
  itemGroups: {
    unit: 'At the unit',
    harness: 'Wiring',
    supply: 'Supply and controller',
    hoses: 'Hoses',
    tools: 'Tools on the bench',
    none: 'Neither',
  },
} as const;
