import type { RigWords } from '../../translate.ts';

/** What is otherwise while the flap actuator is on the bench. */
export const flapActuator: RigWords = {
  items: { unit: 'the unit (flap actuator)' },
  theItems: { unit: 'the unit (flap actuator)' },
  itemGroups: { hoses: 'Hoses and filter' },
  itemModes: {
    unit: {
      diaphragm: 'diaphragm of the can: torn',
      'return-spring': 'return spring of the flap: broken',
    },
  },
  faults: { 'diaphragm-torn': 'The diaphragm of the can is torn.' },
  monitorPhases: {
    'switch-check': 'checking the switch',
    'draw-down': 'drawing the flap',
    hold: 'holding the flap',
    vent: 'letting the flap go',
  },
  drawing: {
    unit: 'flap actuator',
    unitTags: { truck: "the truck's" },
    ports: { 'air-port': 'AIR', 'engine-port': 'ENGINE VACUUM' },
  },
  standardTests: {
    list: {
      'vacuum-and-sense': {
        name: 'Vacuum on the air port and sense, seven times',
        proves: 'The position switch makes and resets every time.',
      },
      'hold-capped': {
        name: 'Hold [15 inHg|51 kPa] on the air port',
        proves: 'The can, its diaphragm and the valve seat towards the engine do not leak.',
      },
      'switch-ohms': { proves: 'The position switch alone, without its wires.' },
      'look-into-hoses': {
        name: 'Look into the air hose',
        proves: 'What lies in the air hose, and what may spoil a unit again.',
      },
      'smoke-unit-alone': { proves: 'Where the can leaks, by eye.' },
      'engine-port-hold': {
        proves: 'The valve seat at rest, and with the solenoid on the can and its diaphragm.',
      },
    },
  },
  coach: {
    questions: {
      'hold-capped': 'You draw the can down and wait. What may let air in, and how fast would you see it?',
      'vacuum-and-sense':
        'The can is drawn by hand. What should the sense voltage do, and does it do so every time?',
    },
  },
  debrief: {
    traceLead: 'Sense voltage at the unit and vacuum in the can over the whole job. Marks are your actions.',
  },
  inside: {
    chambers: { air: 'air passage', engine: 'engine passage' },
    labels: { diaphragm: 'diaphragm' },
    parts: { diaphragm: 'Diaphragm and lever', vacuumSwitch: 'Position switch' },
    plunger: {
      rest: 'at rest: the can is joined to the air passage',
      seated: 'seated: the can is joined to engine vacuum',
    },
    diaphragm: { down: 'back on their spring', up: 'drawn all the way', between: '{{percent}} % drawn' },
  },
  service: {
    invented:
      'Service data of the invented Truck 9. Do not use on any real vehicle: on a real truck its own service information comes first.',
    diagramLabel:
      'Circuit: battery positive through key and 10 A fuse to the controller driver; feed wire PK/BK to cavity 1 and the solenoid coil; ground wire BN from cavity 2 over the splice to the chassis stud; sense wire GY/BU from cavity 3 to the pull-up of the controller; position switch between cavity 3 and cavity 2.',
    valueLines: {
      coil: { value: '28 Ω at [68 °F|20 °C]', hint: 'copper: some [0.06 Ω per °F|0.11 Ω per °C]' },
    },
    portLines: {
      air: { hint: 'by hose to the filter; joined to the can at rest' },
      engine: { hint: 'from the vacuum reservoir; joined to the can with the solenoid on' },
    },
    howText:
      'With the solenoid on, engine vacuum comes into the can and draws its diaphragm against the return spring, and the diaphragm draws the lever. With it off, the can breathes in through the filter and the spring brings the lever back. The position switch closes sense to ground where the lever has come to the end of its way.',
  },
  serviceTests: {
    groups: { whole: 'Whole truck' },
    tests: {
      click: {
        how: 'Key off, part the plug. Ground lead from unit terminal 2 to battery negative. Jumper far end on unit terminal 1 first, supply clip on battery positive last. Switch it on and off three times, each under ten seconds, and listen.',
      },
      coil: { good: '28 Ω ± 6 % at [68 °F|20 °C]' },
      trip: {
        title: 'Vacuum on the air port, solenoid at rest',
        good: 'sense falls to about 0 V by [7 inHg|24 kPa], and stays',
        how: 'Plug mated, pin in cavity 3, red lead on the pin, black on battery negative, key on. Air hose off and plugged, pump hose on the air port. Draw vacuum and watch the sense voltage.',
      },
      hold: {
        title: 'Hold [15 inHg|51 kPa] there',
        proves: 'can, diaphragm, valve seat towards the engine',
        how: 'As before. Stop at [15 inHg|51 kPa] and wait 20 s with the hands off. It takes more strokes than a small unit would: the can is large.',
      },
      points: {
        title: 'Vacuum at full travel, in small strokes',
        good: 'the switch closes at [6.4 ± 0.5 inHg|21.7 ± 1.7 kPa]',
        proves: 'spring, lever and the setting of the switch',
        how: 'As before, from zero, a tenth of a stroke at a time. Read the gauge as the sense voltage falls. Far less: the switch is set wrong. More, or never: a stiff or short lever, or a leak.',
      },
      engine: {
        proves: 'valve seat, can',
        how: 'Pump hose on the engine vacuum port. Draw [15 inHg|51 kPa] with the solenoid off and watch it. Then command the solenoid on: the needle drops far, as the can is filled from the pump. Draw again and watch it.',
      },
      stroke: {
        title: 'Engine running, solenoid commanded on, then off',
        good: 'the reader says closed within 1.5 s, and open within 1.5 s',
        proves: 'the whole of it, with its vacuum and its way out to the air',
        how: 'Everything on, engine running. Command the solenoid on with the reader and watch the sense; wait; command it off. Slow to go: vacuum or a leak. Slow to come back: air hose or filter.',
      },
      smoke: {
        proves: 'hoses, body of the unit',
        how: 'Smoke hose on the air port of the unit, its hose off and plugged. Inert gas only: shop air makes a mixture that burns.',
      },
    },
  },
  serviceTools: {
    cautionLines: {
      tank: 'Engine running: keep hands, sleeves and leads away from belts, fan and everything hot.',
      sparks: 'Sparks only away from the unit: make the jumper there first and switch it at the battery end.',
    },
  },
  serviceMonitor: {
    enableText: 'Once in a drive cycle, at a steady cruise. Else it waits for another day.',
    phaseLines: {
      check: { value: 'sense must be open with the solenoid off' },
      draw: { name: 'Draw', value: 'solenoid on; the switch must close within 3 s' },
      hold: { value: 'solenoid on for 4 s; the switch must stay closed' },
      vent: { name: 'Let go', value: 'solenoid off; the switch must open within 3 s' },
    },
    limits: 'Limits',
    limitsText: 'The same at every fuel level.',
    trip: 'Drawn within',
    small: 'Held for',
    pass: 'Back within',
  },
  reader: { groups: { monitor: 'Flap monitor' }, freezeLines: { strokes: 'Draws' } },
  roadTest: {
    lead: 'The truck goes out for whole drive cycles: a start, a steady cruise in which the controller draws the flap, and back. The bench waits.',
    columns: { monitor: 'Flap monitor', strokes: 'Draws', trip: 'Drawn in' },
    holdLimit: 'must stay {{pass}} s',
    limitsShort: 'The flap is drawn within {{trip}} s and stays drawn for {{pass}} s.',
    limitsNote: 'The limits are the same at every fuel level.',
  },
};
