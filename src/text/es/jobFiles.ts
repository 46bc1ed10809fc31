import type { Catalogue } from '../translate.ts';

/** Archivos de trabajo que se reparten: qué se pide al abrirlos y por qué uno no se puede abrir. */
export const jobFiles: Pick<Catalogue, 'jobFiles'> = {
  jobFiles: {
    problems: {
      'job-file-too-large':
        'Este archivo tiene {{size}} kB, y ningún archivo de trabajo tiene más de {{limit}} kB. Revise que sea el correcto.',
      'job-file-empty': 'Este archivo está vacío. Pídalo de nuevo.',
      'job-file-not-text':
        'Esto no es texto en UTF-8, como lo es todo archivo de trabajo. Revise que sea el correcto.',
      'job-file-not-read': 'Este archivo no se pudo leer. Cópielo a este dispositivo y ábralo desde ahí.',
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
