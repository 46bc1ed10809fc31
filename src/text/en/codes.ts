/** Generic code texts. Source: public lists of SAE J2012 / ISO 15031-6 texts. */
export const codes = {
  codes: {
    P0441: 'Evaporative emission system: incorrect purge flow',
    P0442: 'Evaporative emission system: leak detected (small leak)',
    P0446: 'Evaporative emission system: vent control circuit',
    P0455: 'Evaporative emission system: leak detected (large leak)',
    P0456: 'Evaporative emission system: leak detected (very small leak)',
    P2400: 'Evaporative emission system: leak detection pump control circuit/open',
    P2401: 'Evaporative emission system: leak detection pump control circuit low',
    P2402: 'Evaporative emission system: leak detection pump control circuit high',
    P2403: 'Evaporative emission system: leak detection pump sense circuit/open',
    P2404: 'Evaporative emission system: leak detection pump sense circuit range/performance',
    P2405: 'Evaporative emission system: leak detection pump sense circuit low',
    P2406: 'Evaporative emission system: leak detection pump sense circuit high',
    P2407: 'Evaporative emission system: leak detection pump sense circuit intermittent/erratic',
  },
  codeStatus: { stored: 'stored', pending: 'pending' },
  unknownCode: 'No text for this code in the service data',
} as const;
