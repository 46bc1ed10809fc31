/** The program as this device keeps it: work without the network, and new versions. */
export const edition = {
  edition: {
    kept: 'Guardado en este dispositivo: funciona sin la red.',
    'not-kept':
      'Este navegador no guarda una copia del programa, así que la página necesita la red para abrirse; no se pierde nada más.',
    offered: 'Hay una versión nueva de Known Good. Lo que ha hecho hasta ahora está guardado.',
    later:
      'Hay una versión nueva de Known Good. Se ofrecerá en el tablero de trabajos; nada cambia mientras trabaja aquí.',
    'job-elsewhere':
      'Hay un trabajo abierto en otra página. Vuelva allí al tablero de trabajos y luego use la versión nueva.',
    taking: 'Poniendo la versión nueva …',
    'taken-elsewhere': 'Se puso la versión nueva desde otra página. Recargue esta para usarla aquí también.',
    take: 'Usar la versión nueva',
  },
} as const;
