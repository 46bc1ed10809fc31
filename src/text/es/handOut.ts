/** Entregar un trabajo: legible, o sellado. */
export const handOut = {
  handOut: {
    open: 'Entregar',
    title: 'Entregar este trabajo',
    notYet:
      'El archivo todavía no está en orden, así que no se puede entregar. Escriba y corrija antes lo que está en la lista.',
    toProblems: 'A lo que está en la lista',
    unfit_one: 'La comprobación encontró 1 cosa por corregir. Aun así puede entregar el trabajo.',
    unfit_other: 'La comprobación encontró {{count}} cosas por corregir. Aun así puede entregar el trabajo.',
    noted_one: 'Anota 1 cosa que merece otra mirada.',
    noted_other: 'Anota {{count}} cosas que merecen otra mirada.',
    toProof: 'A la comprobación',
    failedProof: 'La comprobación no se pudo hacer. Aun así puede entregar el trabajo.',
    nothingToProve: 'Una introducción no pide veredicto, así que no hay nada que comprobar.',
    proving: 'La comprobación todavía está en curso.',
    fit: 'La comprobación dice que este trabajo se puede entregar.',
    how: 'Como qué',
    readable: 'Un archivo que todos pueden leer',
    sealed: 'Un archivo sellado',
    readableLine: 'Para practicar. Es el archivo de escenario tal como está, con sus fallas.',
    sealedLine: 'Para una evaluación. La falla está en el archivo, pero allí no se puede leer.',
    sealedMode: {
      practice: 'Este trabajo está puesto como Práctica: el instructor sigue presente.',
      walkthrough: 'Este trabajo está puesto como Paso a paso: lleva de la mano.',
      introduction:
        'Este trabajo está puesto como Primeros minutos: lleva de la mano y no tiene calificación.',
    },
    more: 'Más sobre esto',
    moreSealed: 'La falla tampoco se lee en la página, ni en la dirección, ni en lo que guarda el navegador.',
    honest:
      'Sin código de clase esto es una cortina, no un candado: quien desarme el programa mismo puede mirar detrás. Con un código de {{strong}} letras y dígitos o más, sacados al azar, nadie abre el archivo antes de que se dicte el código. Lo que protege la calificación es que usted repita el registro con su archivo de escenario.',
    code: 'Código de clase',
    codeHint: 'Puede quedar vacío. Mayúsculas, espacios y guiones no cambian nada.',
    draw: 'Sacar un código al azar',
    codeUnfit: 'Un código de clase tiene de {{least}} a {{most}} letras y dígitos.',
    codeWeak:
      'Este código es tan corto que se puede adivinar probando. Uno de {{strong}} letras y dígitos al azar, no.',
    seats: 'Puestos de la clase',
    seatsHint:
      'A cada puesto le toca su propia variante; el alumno da el número de su puesto. De 1 a {{most}}.',
    seatsUnfit: 'Dé un número entero de 1 a {{most}}.',
    variantsNeedCode: 'Este trabajo tiene variantes. Sin código de clase, cada vez se sortea una al azar.',
    save: 'Guardar para entregar',
    working: 'Sellando…',
    saved:
      'Guardado como {{file}}. Conserve su propio archivo de escenario: con él, "known-good grade" repite los registros de sus alumnos.',
    savedCode: 'Anote el código de clase: {{code}}. No se guarda en ningún lado.',
    hash: 'Hash del contenido {{hash}}. El registro de cada alumno lo repite.',
    failed: 'El archivo no se pudo sellar. Revíselo y vuelva a intentarlo.',
    tryIt: 'Probarlo como alumno',
    tryLine: 'Pone el trabajo en el tablero de este navegador y lo abre allí.',
  },
} as const;
