/** What a job may have on its bench. */
export const benchTools = {
  benchTools: {
    meter: 'meter',
    'back-probe-pins': 'back-probe pins',
    'drag-gauge': 'drag gauge',
    jumper: 'fused jumper',
    'plain-lead': 'ground lead',
    'test-lamp': 'test lamp',
    'led-tester': 'LED tester',
    'bench-supply': 'bench supply',
    'hand-pump': 'hand pump',
    'caps-and-plugs': 'caps and plugs',
    jar: '[1 qt|1 L] jar',
    manometer: 'water manometer',
    'smoke-machine': 'smoke machine',
    reader: 'reader',
    'known-good-unit': 'known-good unit',
  },
} as const;
