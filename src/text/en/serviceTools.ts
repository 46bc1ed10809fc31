/** Data of the bench's tools, and the cautions that go with the work. */
export const serviceTools = {
  serviceTools: {
    cautions: 'Cautions',
    cautionLines: {
      tank: 'Canister and tank: never above [14 inH2O, about 0.5 psi or 3.5 kPa|3.5 kPa, 35 hPa on the water manometer], either way.',
      unit: 'Unit alone: never above [22 inHg|74 kPa].',
      smoke: 'Smoke with inert gas only.',
      sparks:
        'No sparks at an open vapour line: plug every hose you take off, make the jumper at the unit first and switch it at the battery end.',
      sense: 'No 12 V and no test lamp on cavity 3 while the plug is mated: the controller is behind it.',
      plug: 'Key off before the plug is parted or mated.',
      ohms: 'Ohms only on a dead circuit, parted from the rest.',
      probe: 'Back-probe. Do not pierce a wire or push a bare tip into a terminal.',
      clamps: 'Clamps hand tight. Tighter cracks the barb.',
      first:
        "On a real truck the vehicle's service information, local codes and licensed practice come first.",
    },
    meter: 'Meter',
    meterLines: {
      display: { name: 'Display', value: '6000 counts', hint: 'four readings a second' },
      input: {
        name: 'Input on volts',
        value: '10 MΩ',
        hint: '3 kΩ on the low-impedance function, for ghost voltages',
      },
      leads: { name: 'Leads', value: '0.1 Ω each' },
      milliamps: { name: 'mA jack', value: '1 Ω, fuse 600 mA', hint: 'in series, never across a source' },
      amps: { name: '10 A jack', value: '0.01 Ω, fuse 10 A' },
      tone: { name: 'Continuity tone', value: 'below 20 Ω' },
    },
    accuracy: 'Accuracy, ± (% of reading + counts)',
    accuracyLines: {
      dc: { name: 'DC volts', value: '0.5 % + 2', hint: '600 V range 0.8 % + 3' },
      ac: { name: 'AC volts, true RMS', value: '1 % + 3', hint: '600 mV range 1.5 % + 4' },
      lowZ: { name: 'Volts, 3 kΩ input', value: '1 % + 4' },
      ohms: { name: 'Ohms', value: '0.8 % + 2', hint: '6 MΩ range 1.5 % + 3, 60 MΩ range 3 % + 5' },
      diode: { name: 'Continuity, diode', value: '1 % + 3' },
      milliamps: { name: 'DC mA', value: '1 % + 3' },
      amps: { name: 'DC 10 A', value: '1.5 % + 3' },
    },
    vacuum: 'Vacuum tools',
    vacuumLines: {
      gauge: {
        name: 'Gauge',
        value: '[0 to 30 inHg|0 to 100 kPa], class 1.6',
        hint: 'class by EN 837-1: ± 1.6 % of full scale, so ± [0.5 inHg|1.6 kPa]',
      },
      pump: { name: 'Hand pump', value: '[1 cu in|16 mL] a stroke', hint: '[3 cu in|50 mL] with its hose' },
      jar: { name: 'Jar', value: '[1 qt (1 L)|1 L]', hint: 'two tees and a needle bleed' },
      manometer: {
        name: 'Water manometer',
        value: '[0 to 30 inH2O, read to 0.1|0 to 75 hPa, read to 0.2]',
        hint: 'more than that and its water is gone',
      },
      smoke: {
        name: 'Smoke machine',
        value: '[0 to 56 inH2O (14 kPa)|0 to 14 kPa] on its regulator',
        hint: 'set it to [14 inH2O (3.5 kPa)|3.5 kPa] or less',
      },
    },
    others: 'Other tools',
    otherLines: {
      jumper: { name: 'Fused jumper', value: '3 A', hint: 'ten seconds at a time' },
      supply: { name: 'Bench supply', value: '12 V, limits at 3 A' },
      lamp: { name: 'Test lamp', value: 'about 0.25 A', hint: 'lights only where a circuit can carry it' },
      led: { name: 'LED tester', value: '1 kΩ', hint: 'pulls sense to about 4 V' },
    },
  },
} as const;
