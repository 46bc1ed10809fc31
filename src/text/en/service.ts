/** Service data of the demonstration rig: circuit and plug. Tests, monitor and tools stand in files of their own. */
export const service = {
  service: {
    invented:
      'Service data of the invented Truck 14. Do not use on any real vehicle: on a real truck its own service information comes first.',
    pagesLabel: 'Pages of the service data',
    pages: { circuit: 'Circuit', tests: 'Tests', monitor: 'Monitor', codes: 'Codes', tools: 'Tools' },
    diagram: 'Circuit diagram',
    diagramLabel:
      'Circuit: battery positive through key and 10 A fuse to the controller driver; feed wire PK/BK to cavity 1 and the solenoid coil; ground wire BN from cavity 2 over the splice to the chassis stud; sense wire GY/BU from cavity 3 to the pull-up of the controller; vacuum switch between cavity 3 and cavity 2.',
    pinout: 'Pinout of the three-way plug',
    cavity: 'Cavity',
    function: 'Function',
    wire: 'Wire',
    pins: {
      1: {
        function: 'solenoid feed, from the controller',
        wire: 'PK/BK',
        size: '[11.5 ft, 20 AWG|3.5 m, 0.5 mm²]',
      },
      2: {
        function: 'ground, over the splice to the chassis stud',
        wire: 'BN',
        size: '[5 ft, 20 AWG|1.5 m, 0.5 mm²]',
      },
      3: {
        function: 'switch sense, to the controller',
        wire: 'GY/BU',
        size: '[11.5 ft, 22 AWG|3.5 m, 0.35 mm²]',
      },
    },
    letterLine:
      'PK pink · BK black · BN brown · GY grey · BU blue. The first colour is the wire, the second its stripe.',
    values: 'Values of the circuit',
    valueLines: {
      supply: {
        name: 'Fuse F, 10 A',
        value: 'feeds the solenoid driver only',
        hint: 'the controller has another',
      },
      driver: {
        name: 'Feed driver',
        value: 'high side, limits at 3 A',
        hint: 'then stays off until the key is turned off',
      },
      bias: {
        name: 'Feed, plug parted, not commanded',
        value: '5.5 to 5.9 V',
        hint: 'a trickle for the open-load check: gone under any load',
      },
      coil: {
        name: 'Solenoid coil',
        value: '32 Ω at [68 °F|20 °C]',
        hint: 'copper: some [0.07 Ω per °F|0.13 Ω per °C]',
      },
      pull: {
        name: 'Sense, switch open, key on',
        value: '8.9 V',
        hint: '9.1 V behind 2.2 kΩ, in the controller',
      },
      sense: {
        name: 'Sense is taken as',
        value: 'closed under 2 V, open above 6 V',
        hint: 'high above 10 V, implausible between',
      },
      most: { name: 'Most the sense input may see', value: '16 V' },
    },
    ports: 'Ports of the unit',
    portLines: {
      canister: {
        name: 'Canister',
        value: '[5/16 in|8 mm] barb',
        hint: 'to the canister and the tank behind it',
      },
      air: {
        name: 'Air',
        value: '[5/16 in|8 mm] barb',
        hint: 'by hose to the filter; joined to the canister side at rest',
      },
      engine: {
        name: 'Engine vacuum',
        value: '[5/32 in|4 mm] barb',
        hint: 'joined to the drive chamber with the solenoid on',
      },
    },
    how: 'How the unit works',
    howText:
      'With the solenoid on, engine vacuum lifts the pump diaphragm and draws air from the canister side through the inlet check. With it off, a spring pushes the diaphragm down and the air leaves by the outlet check. The first strokes pull the vent seat shut. It stays shut from stroke to stroke and opens 2 to 5 s after the last. The vacuum switch closes sense to ground when the canister side passes its trip point.',
    labels: {
      battery: 'battery',
      key: 'key',
      fuse: 'F 10 A',
      controller: 'controller',
      driver: 'driver',
      coil: 'coil',
      switch: 'switch',
      unit: 'unit',
      splice: 'splice',
      stud: 'chassis stud',
      sense: 'sense',
      feed: 'feed',
      ground: 'ground',
    },
  },
} as const;
