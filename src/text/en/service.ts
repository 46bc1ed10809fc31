/** Service data of the demonstration rig. */
export const service = {
  service: {
    title: 'Service data',
    invented: 'Service data of the invented Truck 14. Do not use on any real vehicle.',
    diagram: 'Circuit diagram',
    diagramLabel:
      'Circuit: battery positive through key and 10 A fuse to the controller driver; feed wire PK/BK to cavity 1 and the solenoid coil; ground wire BN from cavity 2 over the splice to the chassis stud; sense wire GY/BU from cavity 3 to the pull-up of the controller; vacuum switch between cavity 3 and cavity 2.',
    pinout: 'Pinout of the three-way plug',
    cavity: 'Cavity',
    function: 'Function',
    wire: 'Wire',
    size: 'Length, size',
    pins: {
      1: { function: 'solenoid feed, from the controller', wire: 'PK/BK', size: '3.5 m, 0.5 mm²' },
      2: { function: 'ground, over the splice to the chassis stud', wire: 'BN', size: '1.5 m, 0.5 mm²' },
      3: { function: 'switch sense, to the controller', wire: 'GY/BU', size: '3.5 m, 0.35 mm²' },
    },
    limits: 'Tests at the unit',
    test: 'Test',
    good: 'A good unit',
    proves: 'What it proves',
    tests: {
      click: {
        test: 'Fused 12 V on feed, ground on ground, plug apart',
        good: 'a click on, a click off, every time',
        proves: 'coil, plunger',
      },
      coil: { test: 'Coil resistance, plug apart', good: '32 Ω ± 6 % at 20 °C', proves: 'winding' },
      sense: {
        test: 'Key on, plug mated, meter from sense to battery negative',
        good: 'about 9 V',
        proves: 'controller pull-up, sense wire, switch open',
      },
      trip: {
        test: 'Air port capped, vacuum on the canister port',
        good: 'sense falls to about 0 V well under 5 inHg, and stays',
        proves: 'switch makes',
      },
      hold: {
        test: 'Hold 15 inHg, capped, unit alone',
        good: 'loses at most 1 inHg in 20 s',
        proves: 'nothing in the canister side leaks',
      },
      reset: { test: 'Let the vacuum off', good: 'sense returns to about 9 V', proves: 'switch resets' },
      drops: {
        test: 'Solenoid commanded on: voltage drop of the ground side and of the feed side',
        good: 'ground at most 0.10 V, feed at most 0.30 V',
        proves: 'wires and terminals under load',
      },
    },
    how: 'How the tests are done',
    howTo: {
      meter: {
        title: 'Prove the meter',
        text: 'DC volts, red lead on battery positive, black on battery negative. A charged battery reads about 12.6 V. Do it before you trust a zero, and again after a surprise.',
      },
      pump: {
        title: 'Prove the hand pump',
        text: 'Gauge at zero. Put a plug into the cone of the pump hose, draw 15 inHg, watch it for a minute. What it loses now is the pump, not the unit.',
      },
      click: {
        title: 'Click test',
        text: 'Key off, part the plug, plug the canister hose. Ground lead from unit terminal 2 to battery negative. Jumper far end on unit terminal 1 first, supply clip on battery positive last. Switch it on and off three times, each under ten seconds, and listen.',
      },
      vacuum: {
        title: 'Vacuum and sense test',
        text: 'Plug mated, pin in cavity 3, red lead on the pin, black on battery negative, key on. Canister hose off and plugged, pump hose on the canister port, air port capped, clamps hand tight. Draw vacuum and watch the sense voltage; hold 20 s; let the vacuum off and watch it return. Three times.',
      },
      loaded: {
        title: 'Supply and ground under load',
        text: 'Command the solenoid on with the reader. Ground side: red on cavity 2, black on battery negative. Feed side: red on battery positive, black on cavity 1. A drop shows only while current flows.',
      },
      rated: {
        title: 'Limits of the unit and the tank side',
        text: 'Unit alone: never above 22 inHg. Canister and tank: never above 14 inH2O (1.03 inHg).',
      },
    },
    labels: {
      battery: 'battery',
      key: 'key',
      fuse: 'F 10 A',
      controller: 'controller',
      driver: 'driver',
      pullup: 'pull-up',
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
