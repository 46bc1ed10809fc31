/** The leak monitor and the codes of the controller, as its service data describes them. */
export const serviceMonitor = {
  serviceMonitor: {
    enable: 'When it runs',
    enableText:
      'Once in a drive cycle, after standing 6 hours: start at [39 to 95 °F|4 to 35 °C], fuel 15 to 85 %, a steady cruise. Else it waits for another day.',
    phases: 'What it does',
    phaseLines: {
      check: { name: 'Switch check', value: 'sense must be open with no vacuum' },
      draw: { name: 'Draw down', value: 'two strokes a second until the switch trips' },
      hold: { name: 'Hold', value: 'solenoid on, vent shut; timed until the switch resets' },
      vent: { name: 'Vent', value: 'solenoid off; the switch must reset within 8 s' },
    },
    limits: 'Limits by fuel level',
    limitsText:
      'Given for [10.6 gal|40 L] of vapour space. They scale with the space above the fuel and in the canister; the reader shows the scaled ones.',
    fuel: 'Fuel',
    space: 'Space',
    trip: 'Trip within',
    small: 'Small leak under',
    pass: 'Passes at',
    trips: 'Codes and the lamp',
    tripsText:
      'A failure makes a pending code. A second failure on the next trip that can judge stores it, lights the lamp and makes it permanent. Three passing trips in a row put the lamp out. Clearing takes stored and pending codes and the freeze data; a permanent code goes only by passing on the road.',
    codesLead:
      'Generic codes that this controller can set. Two faults may set the same code; one fault may set none.',
    setWhen: 'Set when',
    when: {
      P0441: 'drawn down faster than the pump alone could: under one stroke a litre',
      P0442: 'hold under the small-leak limit',
      P0446: 'no reset within 8 s of venting',
      P0455: 'not drawn down within the trip limit',
      P0456: 'hold between the small-leak limit and the passing limit',
      P0457: 'not drawn down on the first drives after refuelling',
      P2400: 'feed open at key-on: the open-load check is not pulled down',
      P2401: 'feed low while commanded on, or the driver has shut itself off',
      P2402: 'feed high while commanded off',
      P2404: 'sense between 2 and 6 V, or wrong for the phase',
      P2405: 'sense closed with no vacuum',
      P2406: 'sense above 10 V',
      P2407: 'sense comes and goes',
    },
    own: 'Codes set by testing, plug apart with the key on, are real codes too. Tell them from the ones the customer brought.',
  },
} as const;
