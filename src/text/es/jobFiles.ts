import type { Catalogue } from '../translate.ts';

/** Archivos de trabajo que se reparten: qué se pide al abrirlos y por qué uno no se puede abrir. */
export const jobFiles: Pick<Catalogue, 'jobFiles'> = {
  jobFiles: {
    title: 'Archivos de trabajo',
    reading: 'Se está leyendo …',
    notInOrder_one: 'Este archivo de escenario no está en orden. Hay una cosa que corregir:',
    notInOrder_other: 'Este archivo de escenario no está en orden. Hay {{count}} cosas que corregir:',
    at: 'Línea {{line}}, columna {{column}}',
    asksCode: 'Este archivo está sellado. Se abre con el código de clase que da su instructor.',
    asksSeat:
      'Este archivo está sellado y cada puesto tiene su propio camión. Dé el código de clase y el número de su puesto.',
    classCode: 'Código de clase',
    seat: 'Puesto (1 a {{seats}})',
    open: 'Abrir',
    opening: 'Se está abriendo …',
    new: 'El trabajo está en el tablero, en «De archivos».',
    'there-already': 'Este trabajo ya está en el tablero.',
    shipped: 'Este es un trabajo del propio tablero. Se queda donde está.',
    namesake:
      'El tablero tiene otro trabajo del mismo nombre con otro contenido. Ambos se quedan, cada uno con sus propias sesiones; este tiene el contenido {{hash}}.',
    notKept:
      'Este navegador no guarda nada, así que el trabajo solo está aquí durante esta visita. Conserve el archivo y exporte el registro antes de cerrar la página.',
    removeTitle: 'Quitar el trabajo',
    removePlain: 'El trabajo sale del tablero. Con su archivo puede volver a abrirlo.',
    removeWithRecords_one:
      'Hay una sesión de este trabajo guardada en este dispositivo. Si está abierta, se guarda como no terminada. ¿Qué se hace con su registro?',
    removeWithRecords_other:
      'Hay {{count}} sesiones de este trabajo guardadas en este dispositivo. La abierta se guarda como no terminada. ¿Qué se hace con sus registros?',
    removeKept: 'Conservar los registros en este dispositivo',
    removeExported: 'Exportar los registros y luego borrarlos',
    removeJob: 'Quitar',
    problems: {
      'job-file-too-large':
        'Este archivo tiene {{size}} KiB, y ningún archivo de trabajo tiene más de {{limit}} KiB. Revise que sea el correcto.',
      'job-file-empty': 'Este archivo está vacío. Pídalo de nuevo.',
      'job-file-not-text':
        'Este no es un archivo de trabajo: es una imagen u otros datos, o texto que no está en UTF-8. Elija el archivo que repartió su instructor.',
      'job-file-not-read': 'Este archivo no se pudo leer. Cópielo a este dispositivo y ábralo desde ahí.',
      'job-file-stopped':
        'Este archivo no se pudo poner en el tablero: no llegó una parte del programa. Vuelva a cargar la página y abra el archivo otra vez.',
      'job-file-damaged':
        'Este archivo sellado cambió o llegó cortado. Pídalo de nuevo, como archivo y no como texto de un mensaje.',
      'job-file-newer': 'Este archivo sellado se hizo con una versión más nueva. Use una versión que lo lea.',
      'job-file-not-its-own':
        'Este archivo sellado contiene otra cosa de lo que dice. Alguien lo armó a mano; pídalo de nuevo.',
      'class-code-wanted':
        'Este archivo se abre con un código de clase. Dé el código que leyó su instructor.',
      'class-code-unfit': 'Un código de clase tiene de 4 a 60 letras y números. Revise cómo está escrito.',
      'class-code-wrong': 'Este código de clase no abre este archivo. Revise las letras o pida el código.',
      'seat-unfit': 'No hay tal puesto en esta clase. Dé un número de 1 a {{seats}}.',
    },
  },
};
