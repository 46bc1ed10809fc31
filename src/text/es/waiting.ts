/** Letting time pass, and what the bench tells by itself. */
export const waiting = {
  waiting: {
    label: 'Espera',
    ten: 'Esperar 10 s',
    steady: 'Hasta estable',
    steadyName: 'Hasta estable: esperar a los instrumentos',
    waited: 'Pasaron {{seconds}} s.',
    steadyNow: 'Estable después de {{seconds}} s.',
    stillMoving: 'Aún se mueve después de {{seconds}} s.',
  },
  told: {
    lampLit: 'La lámpara de prueba enciende.',
    lampGlows: 'La lámpara de prueba enciende débil.',
    lampDark: 'La lámpara de prueba está apagada.',
    ledForward: 'El probador LED enciende, punta positiva.',
    ledReverse: 'El probador LED enciende, pinza positiva.',
    ledDark: 'El probador LED está apagado.',
    smokeAt: 'Sale humo en {{places}}.',
    smokeGone: 'Ya no se ve humo.',
    limiting: 'La fuente de banco limita su corriente.',
    meterBattery: 'El multímetro muestra batería baja.',
  },
} as const;
