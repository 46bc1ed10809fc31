import type { Catalogue } from '../translate.ts';

/** The suspect board. */
export const suspects = {
  suspects: {
    empty:
      'Descarte sospechosos por lo que lee. Resuelva primero los probables. Una marca cuenta solo en la medida en que sus anotaciones la sostienen.',
    neverUsed: 'No se marcó ningún sospechoso.',
    counts:
      'descartados:\u00a0{{cleared}}\u00a0· señalados:\u00a0{{convicted}}\u00a0· sin\u00a0decidir:\u00a0{{open}}',
    locked: 'Ya no cambia.',
    lockedText: 'El veredicto está dado. El tablero queda como estaba entonces.',
    /** Not 'abierto': that is what a broken wire is. */
    is: { open: 'sin decidir', cleared: 'descartado', convicted: 'señalado' },
    by: 'por',
    citedFor: 'Anotaciones citadas sobre: {{item}}',
    noCites: 'ninguna anotación citada',
    markTitle: 'Sospechoso: {{item}}',
    citeTitle: 'Citar la anotación {{id}}',
    which: '¿Para qué sospechoso?',
    choose: 'Elija un sospechoso',
    chooseMark: 'Diga si lo descartan o lo señalan.',
    mark: '¿Qué dicen de él las anotaciones?',
    means: { cleared: 'Lo excluyen.', convicted: 'Demuestran que es este.' },
    carries: 'Una marca cuenta solo en la medida en que sus anotaciones la sostienen.',
    noEntries: 'El registro está vacío. Una marca sin anotaciones no sostiene nada.',
    confirm: 'Poner esta marca',
    takeBack: 'Retirar la marca',
    marked_one: '{{item}}: {{mark}}, por la anotación {{entries}}.',
    marked_other: '{{item}}: {{mark}}, por las anotaciones {{entries}}.',
    markedBare: '{{item}}: {{mark}}, sin anotación.',
    tookBack: '{{item}}: marca retirada, otra vez sin decidir.',
    citeThis: 'Citar',
    citeThisName: 'Citar la anotación {{id}} para un sospechoso',
  },
} satisfies Pick<Catalogue, 'suspects'>;
