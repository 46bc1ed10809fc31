/** What a job may have on its bench. */
export const benchTools = {
  benchTools: {
    meter: 'multímetro',
    'back-probe-pins': 'agujas de sondeo',
    'drag-gauge': 'calibre de arrastre',
    jumper: 'puente con fusible',
    'plain-lead': 'cable de prueba',
    'test-lamp': 'lámpara de prueba',
    'led-tester': 'probador LED',
    'bench-supply': 'fuente de banco',
    'hand-pump': 'bomba de vacío manual',
    'caps-and-plugs': 'tapas y tapones',
    jar: 'frasco de [1 qt|1 L]',
    manometer: 'manómetro de agua',
    'smoke-machine': 'máquina de humo',
    reader: 'lector',
    'known-good-unit': 'unidad buena comprobada',
  },
};
