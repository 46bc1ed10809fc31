import type { Catalogue } from '../translate.ts';

/** The weighing of the evidence beside the bench: what it is at, and what to do when it cannot go on. */
export const evidence = {
  evidence: {
    workingOut: 'Calculando cuánto valió su evidencia …',
    working: 'Pesando todo lo que se mostró',
    notWorkedOut: 'No se pudo calcular la revisión',
    closedAndKept:
      'El trabajo está cerrado y su registro está guardado. Expórtelo, y la línea de comandos lo califica igual que el programa: npm run -s known-good -- grade FILE',
    again: 'Intentar otra vez',
    reload: 'Recargar',
    gone: 'se detuvo sin decir por qué',
    /** Why it cannot be weighed, in a sentence that stands before one of the two below. */
    failures: {
      'no-worker': 'Este navegador no inició la parte que pesa la evidencia ({{detail}}).',
      'no-tables': 'No se pudieron traer las tablas para pesar la evidencia ({{detail}}).',
      'other-rig': 'Las tablas para pesar la evidencia no son de esta versión del programa ({{detail}}).',
      broke: 'Se interrumpió el pesaje de la evidencia ({{detail}}).',
    },
    benchGoesOn: {
      'no-worker':
        'Este navegador no inició la parte que pesa la evidencia ({{detail}}). El banco sigue y no se pierde nada. El instructor calla hasta que usted lo intente otra vez.',
      'no-tables':
        'No se pudieron traer las tablas para pesar la evidencia ({{detail}}). El banco sigue y no se pierde nada. Inténtelo otra vez cuando vuelva la red; hasta entonces el instructor calla.',
      'other-rig':
        'Las tablas para pesar la evidencia no son de esta versión del programa ({{detail}}). El banco sigue y no se pierde nada. Recargue la página para tener al instructor.',
      broke:
        'Se interrumpió el pesaje de la evidencia ({{detail}}). El banco sigue y no se pierde nada. El instructor calla hasta que usted lo intente otra vez.',
    },
  },
} satisfies Pick<Catalogue, 'evidence'>;
