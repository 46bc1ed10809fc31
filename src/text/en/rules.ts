/** Method rules and safety breaches: a title, and one line of why. */
export const rules = {
  rules: {
    'meter-proven': {
      title: 'Meter proven on a known source',
      why: 'A broken lead reads zero, and zero looks like a finding.',
    },
    'meter-proven-again': {
      title: 'Meter proven once more after a surprise',
      why: 'A lead that breaks half way gives you nothing where you hoped for nothing.',
    },
    'leads-noted': {
      title: "Leads' own resistance noted before low ohms",
      why: 'Two leads are two tenths of an ohm. On a low reading that is the reading.',
    },
    'pump-proven': {
      title: 'Hand pump and gauge proven on a closed end',
      why: 'A pump that leaks, or a needle that sticks, makes every good part look bad.',
    },
    'codes-recorded-first': {
      title: 'Codes and freeze data read before anything is cleared',
      why: 'What is cleared is gone, and with it when and how it failed.',
    },
    'own-codes-cleared': {
      title: 'Codes of your own making read and cleared',
      why: 'A plug parted with the key on sets codes. Left in, they send the next one hunting.',
    },
    'cheap-checked-first': {
      title: 'Cheap and likely checked first',
      why: 'A look costs a minute. Skip the fuse or the cap, and you may pay for a controller.',
    },
    'key-off-for-plug': {
      title: 'Key off before the plug is parted or mated',
      why: 'Terminals opened live arc, and the controller stores a code of your own making.',
    },
    'supply-and-ground-loaded': {
      title: 'Supply and ground proven under load',
      why: 'A wire by one strand shows full voltage until current flows.',
    },
    'ohms-on-dead-circuit': {
      title: 'Ohms only on a dead, isolated circuit',
      why: 'A live or joined circuit adds its own volts and paths to the number.',
    },
    'back-probed-with-pins': {
      title: 'Back-probed with pins',
      why: 'A tip pushed into a terminal spreads it, and that is a new fault.',
    },
    'pins-removed': {
      title: 'Pins taken out and seals reseated',
      why: 'A seal left open lets water in; the fault comes back in a month.',
    },
    'jumper-short-and-fused': {
      title: 'Jumper fused, switched, plug apart, ten seconds at most',
      why: 'The fuse saves the wiring, the switch keeps the spark away, short time keeps the coil cool.',
    },
    'air-port-capped': {
      title: 'Air port capped for the vacuum test',
      why: 'At rest the vent seat is open: without the cap the pump draws from the room.',
    },
    'canister-hose-plugged': {
      title: 'Open canister hose plugged',
      why: 'Vapour must not stand open beside a spark, and dirt must stay out.',
    },
    'clamps-hand-tight': {
      title: 'Clamps hand tight',
      why: 'A loose clamp leaks; an over-tight one cracks the barb.',
    },
    'click-three-times': {
      title: 'Click tried at least three times',
      why: 'One click may be the lucky one of a sticking plunger. What comes and goes asks for more.',
    },
    'vacuum-three-times': {
      title: 'Vacuum test done at least three times',
      why: 'A switch that works once may not work the next time. What comes and goes asks for more.',
    },
    'return-observed': {
      title: 'Vacuum let off and the return watched',
      why: 'A switch that makes but never opens again passes half a test.',
    },
    'hold-watched': {
      title: 'Vacuum left alone and watched, for twenty seconds or until it was gone',
      why: 'A small leak needs time to show on a gauge. Watched is not yet passed.',
    },
    'new-unit-tested': {
      title: 'New unit tested on the bench before one was fitted',
      why: 'New is not the same as good, and out of the box it is quickly tried.',
    },
    'root-looked-for': {
      title: 'Looked for what spoils a unit',
      why: 'Fuel or charcoal in the hose, water or dirt in the filter: what killed this unit kills the next.',
    },
    'bench-restored': {
      title: 'Hoses, caps and plug put back',
      why: 'A hose left off is the next customer complaint.',
    },
    'lock-checked': {
      title: 'Lock of the plug checked',
      why: 'A plug that is pushed home but not locked works until the first bump.',
    },
    'pending-codes-read': {
      title: 'Pending codes read after the drive',
      why: 'A failure on one drive lights no lamp. It only stands there as pending.',
    },
  },
  safety: {
    'unfused-source':
      'Battery voltage was put on the circuit without a fuse. A short there burns the wiring.',
    'supply-on-sense-mated':
      '12 V was put on the sense wire with the plug mated. That wire ends inside the controller.',
    'lamp-on-sense-mated':
      'A test lamp was put on the sense wire with the plug mated. It pulls the circuit down and loads the controller.',
    'slipped-probe':
      'A tip was laid across two cavities of the mated plug. That shorts two circuits of the controller.',
    'too-much-pressure-on-canister':
      'More than [14 inH2O|3.5 kPa] was blown into the canister side of the truck. Tank and canister are not built for it.',
    'smoke-with-shop-air':
      'Smoke was blown with shop air. Air and fuel vapour make a mixture that burns; use inert gas only.',
    'too-much-vacuum-on-canister':
      'More than [14 inH2O|3.5 kPa] was drawn on the canister side of the truck. Tank and canister are not built for it.',
    'over-rated-vacuum': 'The unit was drawn above its rated [22 inHg|74 kPa].',
    'spark-at-open-vapour':
      'A jumper was made or broken beside an open vapour line. Plug the hoses and air the unit first.',
    'spark-at-unaired-unit':
      'Contact was made or broken with a tip at a unit that had not been aired. Take it off its vapour hose, let it air, and use the switch at the battery end.',
  },
  grades: { minor: 'minor', serious: 'serious' },
} as const;
