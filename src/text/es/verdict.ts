import type { Catalogue } from '../translate.ts';

/** Verdict, repair and parts cupboard. */
export const verdict = {
  verdict: {
    title: 'Veredicto',
    lead: 'Señale la única parte que se debe renovar, y cite las anotaciones que lo demuestran. El veredicto se da una sola vez.',
    item: '¿Qué está mal?',
    cites: 'Anotaciones citadas ({{count}} de {{max}})',
    noEntries: 'El registro está vacío. Un veredicto sin anotaciones es una suposición.',
    ask: '¿Dar este veredicto como definitivo?',
    mode: '¿Qué tiene mal?',
    modeLater: 'Se pregunta cuando haya elegido una parte.',
    noMode: 'De esta no se pregunta más.',
    cannotSay: 'No puedo decirlo',
    chooseMode: 'Diga qué tiene mal, o que no puede decirlo.',
    fromBoard: 'Parte y anotaciones como están señaladas en su tablero de sospechosos.',
    youName: 'Usted señala {{item}}.',
    youNameMode: 'Usted señala {{item}}: {{mode}}.',
    youNameBlind: 'Usted señala {{item}}, y no dice qué tiene mal.',
    youCite_zero: 'Usted no cita ninguna anotación.',
    youCite_one: 'Usted cita {{count}} anotación del registro.',
    youCite_other: 'Usted cita {{count}} anotaciones del registro.',
    isFinal: 'Después no se puede cambiar.',
    next: 'Dar este veredicto',
    lock: 'Darlo como definitivo',
    review: 'Revisar otra vez',
    chooseItem: 'Elija primero una parte.',
    locked: 'Veredicto definitivo: {{item}}.',
  },
  closing: {
    title: 'Cerrar el trabajo',
    text: 'Al cerrar termina el trabajo y se abre la revisión. ¿Están puestas las mangueras, fuera las tapas y las agujas, conectado el conector y probada la reparación?',
    confirm: 'Cerrar el trabajo',
    stay: 'Seguir trabajando',
  },
} satisfies Pick<Catalogue, 'verdict' | 'closing'>;
