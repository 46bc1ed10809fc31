/** Captions for what is heard or seen for a moment. */
export const happenings = {
  happenings: {
    'click-on': 'clic',
    'click-off': 'clic',
    tone: 'tono',
    hiss: 'siseo',
    spark: 'chispa',
    'fuse-pop': 'pum',
    relay: 'tic',
    stroke: 'carrera',
    'barb-cracked': 'crac',
    'water-lost': 'gorgoteo',
    'smoke-seen': 'humo',
    'crack-heard': 'crac',
    'lead-burnt': 'quemado',
  },
  happeningSentences: {
    'click-on': 'Clic de la unidad: el émbolo entró.',
    'click-off': 'Clic de la unidad: el émbolo regresó.',
    tone: 'Tono de continuidad.',
    hiss: 'Siseo de aire.',
    spark: 'Una chispa donde se abrió el circuito.',
    'fuse-pop': 'Se fundió un fusible.',
    relay: 'Un tic debajo del tablero.',
    'barb-cracked': 'Se rajó la espiga: la abrazadera estaba demasiado apretada.',
    'water-lost': 'El manómetro se quedó sin agua: fue aspirada.',
    'smoke-seen': 'Sale humo en algún lugar.',
    'crack-heard': 'Algo cedió con un crujido.',
    'lead-burnt': 'Un cable humea y su aislamiento está quemado.',
  },
  /** With the place, where it could be told. */
  happeningAt: {
    truckFuse: 'Se fundió el fusible del camión.',
    jumperFuse: 'Se fundió el fusible del puente.',
    meterFuse: 'Se fundió un fusible dentro del multímetro.',
    barb: 'Se rajó la espiga del {{port}}: la abrazadera estaba demasiado apretada.',
  },
} as const;
