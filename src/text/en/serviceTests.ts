/** Standard tests of the rig: what is done, what is good, what it proves, and how. */
export const serviceTests = {
  serviceTests: {
    lead: 'Test unhurriedly, two or three times, joints hand tight. Prove the tools first.',
    good: 'Good',
    proves: 'Proves',
    groups: { tools: 'The tools first', electric: 'Electrical', vacuum: 'Vacuum', whole: 'Whole system' },
    tests: {
      meter: {
        title: 'Meter on a known source',
        good: 'about 12.6 V on a charged battery; leads tip to tip at most 0.3 Ω',
        proves: 'meter, its leads, its fuse',
        how: 'DC volts, red lead on battery positive, black on battery negative. Before you trust a zero, and again after a surprise. Low ohms: tips together first, and take that off. Current: prove the jack and its fuse on the bench supply through a known load.',
      },
      pump: {
        title: 'Hand pump and gauge, dead end',
        good: 'needle at zero before; [15 inHg|51 kPa] loses less than a needle width in 60 s',
        proves: 'pump, hose, cone, gauge',
        how: 'Put a plug into the cone of the pump hose, draw [15 inHg|51 kPa], watch it for a minute. What it loses now is the pump, not the unit.',
      },
      click: {
        title: 'Fused 12 V on feed, ground on ground, plug apart',
        good: 'a click on, a click off, every time',
        proves: 'coil, plunger',
        how: 'Key off, part the plug, plug the canister hose. Ground lead from unit terminal 2 to battery negative. Jumper far end on unit terminal 1 first, supply clip on battery positive last. Switch it on and off three times, each under ten seconds, and listen.',
      },
      coil: {
        title: 'Coil resistance, plug apart, at a known temperature',
        good: '32 Ω ± 6 % at [68 °F|20 °C]',
        proves: 'winding',
        how: 'Key off, plug apart, nothing else on the terminals. Ohms from unit terminal 1 to unit terminal 2. Take off the resistance of the leads. Copper gains some [0.2 % per °F|0.4 % per °C].',
      },
      sense: {
        title: 'Key on, plug mated, sense to battery negative',
        good: 'about 9 V',
        proves: 'controller pull-up, sense wire, switch open',
        how: 'Pin in cavity 3, red lead on the pin, black on battery negative, DC volts, key on.',
      },
      pullUp: {
        title: 'The same at the harness half, plug apart',
        good: 'about 9 V on harness terminal 3; the reader says open, and closed with terminal 3 joined to 2',
        proves: 'controller, sense wire and ground, without the unit',
        how: 'Key off, part the plug, key on. Read harness terminal 3 to battery negative. Then the ground lead from harness terminal 3 to harness terminal 2, and look at the reader. Codes set by this are of your own making: read and clear them afterwards.',
      },
      drops: {
        title: 'Voltage drop of ground side and feed side, solenoid commanded on',
        good: 'ground at most 0.10 V, feed at most 0.30 V',
        proves: 'wires and terminals under load',
        how: 'Command the solenoid on with the reader. Ground side: red on cavity 2, black on battery negative. Feed side: red on battery positive, black on cavity 1. A drop shows only while current flows.',
      },
      drag: {
        title: 'Drag gauge in each terminal of the harness half',
        good: 'the terminal grips',
        proves: 'terminals not spread',
        how: 'Key off, plug apart. A bare meter tip pushed into a terminal spreads it: use the matched test pin.',
      },
      trip: {
        title: 'Air port capped, vacuum on the canister port',
        good: 'sense falls to about 0 V well under [5 inHg|17 kPa], and stays',
        proves: 'switch makes',
        how: 'Plug mated, pin in cavity 3, red lead on the pin, black on battery negative, key on. Canister hose off and plugged, pump hose on the canister port, air port capped. Draw vacuum and watch the sense voltage.',
      },
      hold: {
        title: 'Hold [15 inHg|51 kPa], capped, unit alone',
        good: 'loses at most [1 inHg|3 kPa] in 20 s',
        proves: 'nothing in the canister side leaks',
        how: 'As before. Stop at [15 inHg|51 kPa] and wait 20 s with the hands off. On high ground [15 inHg|51 kPa] is harder to reach.',
      },
      reset: {
        title: 'Let the vacuum off',
        good: 'sense returns to about 9 V',
        proves: 'switch resets',
        how: 'Open the release and watch the sense voltage come back. Then the same again, twice.',
      },
      points: {
        title: 'Trip and reset on the water manometer, slowly',
        good: 'trip [10 ± 0.8 inH2O|25 ± 2 hPa], reset [7.6 ± 0.8 inH2O|19 ± 2 hPa]',
        proves: "the switch's own points",
        how: 'Jar hose on the canister port, manometer and pump on the two tees of the jar, air port capped. Quarter strokes only. Read the column as the sense voltage falls. Then open the needle bleed a little and read it again as the voltage returns. Above [30 inH2O|75 hPa] the water is drawn out.',
      },
      engine: {
        title: 'Engine port drawn to [15 inHg|51 kPa], solenoid off, then on',
        good: 'holds both ways',
        proves: 'valve seat, drive side of the diaphragm',
        how: 'Pump hose on the engine vacuum port. Draw [15 inHg|51 kPa] with the solenoid off and watch it. Then put fused 12 V on the solenoid: the needle drops once, as the chamber fills. Draw again and watch it.',
      },
      vent: {
        title: 'The same with the solenoid on and the air port open, then vacuum on the canister port',
        good: 'canister port holds',
        proves: 'vent seat shuts and seals',
        how: 'Engine vacuum on its port, solenoid on, air port open. Then the pump on the canister port: what it holds now it holds against the open air port.',
      },
      stroke: {
        title: 'Pulse the solenoid, engine vacuum on its port, [1 qt|1 L] jar on the canister port',
        good: 'jar is drawn down some [0.5 inHg|1.7 kPa] a pulse and keeps it between pulses',
        proves: 'diaphragm, both checks',
        how: 'Engine running, its hose on the engine vacuum port. Jar hose on the canister port, pump hose on one tee for its gauge. Take the manometer off and cap its tee: its water would be gone in two seconds. Pulse the solenoid with the reader for five seconds, then off, and watch what the jar keeps.',
      },
      smoke: {
        title: 'Low-pressure smoke, inert gas, air hose plugged',
        good: 'no smoke outside; the flow ball sinks',
        proves: 'hoses, vessel, body of the unit',
        how: 'The vent is open at rest, so plug the air hose first. Never above [14 inH2O|3.5 kPa]. Inert gas only: shop air makes a mixture that burns.',
      },
      road: {
        title: 'Road test',
        good: 'the monitor runs and passes; no pending code afterwards',
        proves: 'the repair',
        how: 'Everything refitted, tools off the truck. Two cycles tell a failure, three passes put the lamp out. Read pending codes after the drive.',
      },
    },
  },
} as const;
