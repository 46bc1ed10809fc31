/** Generic code texts, after the public lists of SAE J2012 / ISO 15031-6; the Spanish is our own. */
export const codes = {
  codes: {
    P0441: 'Sistema de emisiones evaporativas: flujo de purga incorrecto',
    P0442: 'Sistema de emisiones evaporativas: fuga detectada (fuga pequeña)',
    P0446: 'Sistema de emisiones evaporativas: circuito de control de ventilación',
    P0455: 'Sistema de emisiones evaporativas: fuga detectada (fuga grande)',
    P0456: 'Sistema de emisiones evaporativas: fuga detectada (fuga muy pequeña)',
    P0457: 'Sistema de emisiones evaporativas: fuga detectada (tapón de combustible flojo o ausente)',
    P2400:
      'Sistema de emisiones evaporativas: circuito de control de la bomba de detección de fugas, abierto',
    P2401: 'Sistema de emisiones evaporativas: circuito de control de la bomba de detección de fugas, bajo',
    P2402: 'Sistema de emisiones evaporativas: circuito de control de la bomba de detección de fugas, alto',
    P2403: 'Sistema de emisiones evaporativas: circuito de señal de la bomba de detección de fugas, abierto',
    P2404:
      'Sistema de emisiones evaporativas: circuito de señal de la bomba de detección de fugas, rango o desempeño',
    P2405: 'Sistema de emisiones evaporativas: circuito de señal de la bomba de detección de fugas, bajo',
    P2406: 'Sistema de emisiones evaporativas: circuito de señal de la bomba de detección de fugas, alto',
    P2407:
      'Sistema de emisiones evaporativas: circuito de señal de la bomba de detección de fugas, intermitente o errático',
  },
  codeStatus: { stored: 'almacenado', pending: 'pendiente', permanent: 'permanente' },
  monitorPhases: {
    waiting: 'espera sus condiciones',
    'switch-check': 'revisa el interruptor',
    'draw-down': 'hace vacío',
    hold: 'en retención',
    vent: 'ventila',
    passed: 'aprobado',
    failed: 'reprobado',
    'not-run': 'no corrió',
  },
  driveOutcomes: {
    'not-run': 'el monitor no corrió',
    passed: 'monitor aprobado',
    failed: 'monitor reprobado',
    'circuit-fault': 'falla de circuito, el monitor no corrió',
  },
  unknownCode: 'Los datos de servicio no tienen texto para este código',
} as const;
