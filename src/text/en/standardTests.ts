/** The standard tests of the rig: their names, what each proves, and the words of their procedures. */
export const standardTests = {
  standardTests: {
    list: {
      'meter-on-battery': {
        name: 'Meter on the battery',
        proves: 'Meter, leads and meter battery: a known source reads what it is worth.',
      },
      'meter-leads-together': {
        name: 'Meter leads tip to tip, ohms',
        proves: 'Leads are whole; what they read now comes off every low reading.',
      },
      'meter-current-fuse': {
        name: 'Milliamps through the LED tester from the bench supply',
        proves: 'The fuse of the milliamps jack is whole.',
      },
      'hand-pump-dead-end': {
        name: 'Hand pump and gauge on a closed end, 60 s',
        proves: 'Pump, hose, cone and gauge: what is lost later is not theirs.',
      },
      'jumper-proof': {
        name: 'Jumper between battery and meter',
        proves: 'The fuse and the switch of the jumper are whole.',
      },
      'plain-lead-proof': {
        name: 'Ground lead across the meter tips, continuity',
        proves: 'The ground lead is whole.',
      },
      'look-around': {
        name: 'Look at everything in sight',
        proves:
          'Chafed wires, splits, cracks, pinched hoses, a loose cap and a dirty filter, where they can be seen.',
      },
      'look-plug': {
        name: 'Look into the parted plug',
        proves: 'Corrosion, water and wide terminals in the plug.',
      },
      'look-into-hoses': {
        name: 'Look into canister hose and air hose',
        proves: 'Charcoal, fuel, a blocked bore, a cracked barb.',
      },
      'look-fuse': { name: 'Pull the fuse and look at it', proves: 'The fuse element is whole or melted.' },
      'listen-running': {
        name: 'Listen with the engine running',
        proves: 'Leaks that engine vacuum makes audible.',
      },
      'drag-terminals': {
        name: 'Drag gauge in the three harness terminals',
        proves: 'Which terminal grips and which is slack.',
      },
      'codes-and-freeze-data': {
        name: 'Read codes and freeze data',
        proves: 'What the controller has seen fail, before anything is disturbed.',
      },
      'reader-at-rest': {
        name: 'Reader: sense at rest, driver when commanded',
        proves: 'What the controller itself makes of both circuits.',
      },
      'road-test': {
        name: 'Road test of three drives',
        proves: 'Whether the monitor runs, and whether it passes.',
      },
      'sense-at-plug': {
        name: 'Sense at the plug, key on, to battery negative',
        proves: 'Pull-up, sense wire and an open switch, about 9 V.',
      },
      'sense-at-controller': {
        name: 'Sense at the controller end, key on',
        proves: 'Against the reading at the plug: the sense wire between the two.',
      },
      'sense-with-solenoid-on': {
        name: 'Sense with the solenoid on',
        proves: 'The shared ground: a bad one lifts the sense line as soon as the coil draws.',
      },
      'feed-at-rest': {
        name: 'Feed at the plug, not commanded',
        proves: 'Driver off, coil connected, no foreign volts on the feed.',
      },
      'battery-under-load': {
        name: 'Battery with the solenoid on',
        proves: 'The battery holds its volts under load.',
      },
      'ground-drop': {
        name: 'Ground drop, solenoid on',
        proves: 'Ground wire, splice and stud under load: at most 0.10 V.',
      },
      'feed-drop': {
        name: 'Feed drop, solenoid on',
        proves: 'Everything from the battery to cavity 1 under load: at most 0.30 V.',
      },
      'feed-wire-drop': {
        name: 'Drop of the feed wire alone, solenoid on',
        proves: 'The feed wire between its two ends.',
      },
      'fused-supply-drop': {
        name: 'Drop from battery to the load side of the fuse, solenoid on',
        proves: 'Key contacts and fuse under load.',
      },
      'controller-feed-on': {
        name: 'Feed at the controller end, solenoid on',
        proves: 'What the driver delivers before any wire.',
      },
      'command-clicks': {
        name: 'Clicks on command, three times',
        proves: 'Driver, wires, coil and plunger together.',
      },
      'feed-bias-10-megohm': {
        name: 'Bias on the parted feed, 10 MΩ input',
        proves: 'The feed wire has its connection to the controller; this is no supply.',
      },
      'feed-bias-3-kilohm': {
        name: 'Bias on the parted feed, 3 kΩ input',
        proves: 'The volts of the parted feed are a ghost and vanish under a load.',
      },
      'lamp-on-feed': {
        name: 'Test lamp on the parted feed',
        proves: 'Driver, fuse and feed wire carry current.',
      },
      'lamp-on-ground': {
        name: 'Test lamp from battery positive to the parted ground, with the drop',
        proves: 'The ground wire carries current.',
      },
      'sense-parted': {
        name: 'Sense at the harness half, bare and under the LED tester',
        proves: 'Pull-up and sense wire without the unit, and that there is something behind the volts.',
      },
      'sense-current': {
        name: 'Pull-up current of the sense wire to ground',
        proves: 'The resistance of pull-up and sense wire together, about 4 mA.',
      },
      'bridge-3-to-2': {
        name: 'Harness terminals 3 and 2 joined, reader watched',
        proves: 'Controller, sense wire and ground: the reader has to say closed.',
      },
      'sense-wire-drop': {
        name: 'Drop of the sense wire, terminals 3 and 2 joined',
        proves: 'The sense wire between its two ends, under its own current.',
      },
      'feed-wire-ohms': { name: 'Ohms of the feed wire, plug apart', proves: 'The feed wire is not open.' },
      'ground-wire-ohms': {
        name: 'Ohms of the ground wire, plug apart',
        proves: 'The ground wire is not open; under load is the better proof.',
      },
      'cavities-1-to-2-ohms': {
        name: 'Ohms from harness terminal 1 to 2, plug apart',
        proves: 'No short and no water between feed and ground.',
      },
      'cavities-2-to-3-ohms': {
        name: 'Ohms from harness terminal 2 to 3, plug apart',
        proves: 'No short and no water between ground and sense.',
      },
      'wiggle-sense': {
        name: 'Sense watched while wire and plug are moved',
        proves: 'A sense wire that comes and goes.',
      },
      'wiggle-feed': {
        name: 'Feed watched while wire and plug are moved, solenoid on',
        proves: 'A feed wire or terminal 1 that comes and goes.',
      },
      'wiggle-ground': {
        name: 'Ground drop watched while wire and plug are moved, solenoid on',
        proves: 'A ground wire or terminal 2 that comes and goes.',
      },
      'tug-plug-switch-closed': {
        name: 'Plug tugged while vacuum holds the switch closed',
        proves: 'Terminal from contact: the unit is steady, so a jump is the plug.',
      },
      'coil-ohms': { name: 'Coil ohms, plug apart', proves: 'Winding: 32 Ω ± 6 % at [68 °F (20 °C)|20 °C].' },
      'switch-ohms': {
        name: 'Switch ohms, at rest and under [5 inHg|17 kPa], plug apart',
        proves: 'The contact opens, makes, and makes well.',
      },
      'jumper-clicks': {
        name: 'Nine clicks on the fused jumper, test lamp across the coil',
        proves: 'Coil and plunger without the truck: a click every time.',
      },
      'vacuum-and-sense': {
        name: 'Vacuum and sense, seven times',
        proves: 'The switch makes and resets every time.',
      },
      'hold-capped': {
        name: 'Hold [15 inHg|51 kPa], unit alone, capped',
        proves: 'Nothing on the canister side of the unit leaks.',
      },
      'trip-and-reset': {
        name: 'Trip and reset on the water manometer',
        proves: "The switch's own two points, which no hand gauge resolves.",
      },
      'travel-vacuum': {
        name: 'Vacuum at full travel',
        proves:
          'How much vacuum the lever needs to come to its switch: spring, lever, diaphragm and adjustment in one figure.',
      },
      'engine-port-hold': {
        name: 'Engine port drawn to [15 inHg|51 kPa], solenoid off and on',
        proves: 'Valve seat and drive side of the diaphragm; the drop on switching is the plunger moving.',
      },
      'vent-shut-hold': {
        name: 'Vent shut by engine vacuum, vacuum on the canister port, air port open',
        proves: 'The vent seat shuts, seals, and opens again in time.',
      },
      'stroke-jar': {
        name: 'Stroke test on the jar',
        proves: 'Diaphragm, spring and both checks at work, and that what is drawn is kept.',
      },
      'slow-strokes-jar': {
        name: 'Three slow strokes on jar and manometer',
        proves:
          'What comes back between strokes is the inlet check; a short stroke is outlet, diaphragm or spring.',
      },
      'run-and-return': {
        name: 'Drawn and let go, engine running',
        proves: 'The whole actuator as it works on the road, with the times of its going and coming back.',
      },
      'engine-vacuum-at-hose': {
        name: 'Engine vacuum at its hose, shut and flowing',
        proves: 'The engine vacuum hose: a leak, or a pinch that shows in flow only.',
      },
      'air-hose-breathes': {
        name: 'Hand pump on the air hose',
        proves: 'Air hose and filter let air through: the needle stays at zero.',
      },
      'draw-whole-system': {
        name: 'Unit draws the whole system and holds it',
        proves: "The monitor's own test, on the bench: seconds to trip, seconds held.",
      },
      'draw-canister-hose-plugged': {
        name: 'The same with the canister hose plugged',
        proves: 'Clamp-off: unit and circuits without hose and vessel.',
      },
      'smoke-whole-system': {
        name: 'Smoke through the unit into everything',
        proves: 'Where the whole system leaks.',
      },
      'smoke-vessel-alone': {
        name: 'Smoke into the canister hose, unit off',
        proves: 'Clamp-off: hose, canister, tank and cap without the unit.',
      },
      'smoke-unit-alone': {
        name: 'Smoke on the unit alone',
        proves: 'Capsule from body crack: smoke tells which.',
      },
      'smoke-air-hose': { name: 'Smoke into the air hose', proves: 'Air hose and filter are free.' },
      'smoke-engine-hose': {
        name: 'Smoke into the engine vacuum hose',
        proves: 'A split or a pinch of the engine vacuum hose.',
      },
    },
    parts: { setUp: 'Set up', work: 'Test', undo: 'Put back', cautions: 'Cautions' },
    steps: {
      onPort: '{{item}} on {{site}}, hand tight',
      onEnd: '{{item}} into {{site}}',
      wait: 'wait {{seconds}} s',
      steady: 'wait until the reading stands still',
      strokes: 'pump until {{goal}}, {{most}} strokes at most',
      partStrokes: 'pump with small strokes until {{goal}}, {{most}} at most',
      until: 'wait until {{goal}}, {{seconds}} s at most',
      repeat: 'do this {{times}} times:',
      refill: 'fill the manometer again if its water was drawn out',
      stroke: 'one pump stroke',
      partStroke: 'a pump stroke of {{percent}} % of its travel',
      range: 'hold the 60 V range',
      look: 'look at {{place}}',
      listen: 'listen at {{place}}',
      wiggle: 'move the harness: {{place}}',
      drag: 'feel terminal {{cavity}} with the drag gauge',
      road: 'drive {{cycles}} drive cycles',
      smoke: 'smoke machine on inert gas at {{pressure}}',
      bleedShut: 'needle bleed shut',
      smokeOff: 'smoke machine off',
      command: 'with the reader, command the solenoid: {{command}}',
      record: 'let the meter record, {{show}} shown',
      release: 'release open',
      releaseShut: 'release shut',
    },
    goals: {
      'gauge-at-least': 'the gauge stands at {{vacuum}}',
      'gauge-halved': 'the gauge has fallen by half',
      open: 'the reader says the switch is open',
      closed: 'the reader says the switch is closed',
    },
    readings: {
      meter: 'note the meter',
      tone: 'note whether the tone sounds',
      'meter-battery-sign': 'note whether the meter shows its battery sign',
      gauge: 'note the gauge',
      'gauge-lost': 'note what the gauge has lost since',
      manometer: 'note the water manometer',
      'manometer-at-goal': 'note the water manometer at that moment',
      'manometer-lost': 'note what has come back on the water manometer since',
      'reader-volts': 'note the sense volts on the reader',
      'reader-state': 'note what the reader says of the switch',
      'reader-driver': 'note what the reader says of the driver',
      'click-on': 'note whether it clicked in',
      'click-off': 'note whether it clicked out',
      lamp: 'note the test lamp: dark, dim or bright',
      led: 'note the LED tester',
      smoke: 'note where smoke comes out, the pressure and the flow ball',
      finding: 'note what you find',
      codes: 'note the codes and their state',
      'freeze-data': 'note the freeze data',
      drive: 'note how each drive cycle ended',
      fuse: 'note the fuse element',
      'jumper-fuse': "note the jumper's fuse",
      'seconds-taken': 'note how many seconds that took',
      'strokes-taken': 'note how many strokes that took',
    },
  },
} as const;
