/** The first minutes: the offer on the board, the page before them, the panel after them. */
export const introduction = {
  introduction: {
    offer: '¿Primera vez aquí? Cinco minutos en el banco',
    begin: 'Al banco',
    notNow: 'Ahora no',
    /** Before the button of the small line on the board. */
    later: '¿Es nuevo en el banco, o se lo muestra a alguien?',
    open: 'Cinco minutos en el banco',
    resume: 'Seguir con los cinco minutos',
    learn: 'Usted aprenderá a',
    before: 'Antes de tocar un camión',
    cautions: 'Precauciones',
    skipRest: 'Omitir lo que falta',
    done: 'Terminar',
    canNow: 'Eso fue todo. Ahora usted puede',
    canNowSome: 'No se hicieron todos los pasos. Los cinco minutos completos le enseñan a',
    allDone: 'No quedan más pasos.',
    firstJob: 'Abrir el primer trabajo: {{title}}',
    board: 'Al tablero de trabajos',
    again: 'Otra vez desde el principio',
  },
} as const;
