import type { Catalogue } from '../translate.ts';

/** Data of the bench's tools, and the cautions that go with the work. */
export const serviceTools = {
  serviceTools: {
    cautions: 'Precauciones',
    cautionLines: {
      tank: 'Cánister y tanque: nunca más de [14 inH2O, unos 0.5 psi o 3.5 kPa|3.5 kPa, 35 hPa en el manómetro de agua], ni de presión ni de vacío.',
      unit: 'Unidad sola: nunca más de [22 inHg|74 kPa].',
      smoke: 'Humo solo con gas inerte.',
      sparks:
        'Ninguna chispa junto a una línea de vapor abierta: ponga tapón a cada manguera que quite, conecte primero el puente en la unidad y enciéndalo del lado de la batería.',
      sense:
        'Ni 12 V ni lámpara de prueba en la cavidad 3 con el conector conectado: detrás está el módulo de control.',
      plug: 'Llave en OFF antes de desconectar o conectar el conector.',
      ohms: 'Ohmios solo en un circuito sin energía, separado de lo demás.',
      probe: 'Sondee por detrás. No perfore un cable ni meta una punta desnuda en un terminal.',
      clamps: 'Abrazaderas apretadas a mano. Más apretadas rajan la espiga.',
      first:
        'En un camión real van primero la información de servicio del vehículo, los códigos locales y la práctica con licencia.',
    },
    meter: 'Multímetro',
    meterLines: {
      display: { name: 'Pantalla', value: '6000 cuentas', hint: 'cuatro lecturas por segundo' },
      input: {
        name: 'Entrada en voltios',
        value: '10 MΩ',
        hint: '3 kΩ en la función de baja impedancia, para voltajes fantasma',
      },
      leads: { name: 'Puntas', value: '0.1 Ω cada una' },
      milliamps: {
        name: 'Borne mA',
        value: '1 Ω, fusible de 600 mA',
        hint: 'en serie, nunca entre los polos de una fuente',
      },
      amps: { name: 'Borne de 10 A', value: '0.01 Ω, fusible de 10 A' },
      tone: { name: 'Tono de continuidad', value: 'abajo de 20 Ω' },
    },
    accuracy: 'Exactitud, ± (% de la lectura + cuentas)',
    accuracyLines: {
      dc: { name: 'Voltios CD', value: '0.5 % + 2', hint: 'rango de 600 V 0.8 % + 3' },
      ac: { name: 'Voltios CA, RMS verdadero', value: '1 % + 3', hint: 'rango de 600 mV 1.5 % + 4' },
      lowZ: { name: 'Voltios, entrada de 3 kΩ', value: '1 % + 4' },
      ohms: {
        name: 'Ohmios',
        value: '0.8 % + 2',
        hint: 'rango de 6 MΩ 1.5 % + 3, rango de 60 MΩ 3 % + 5',
      },
      diode: { name: 'Continuidad, diodo', value: '1 % + 3' },
      milliamps: { name: 'mA CD', value: '1 % + 3' },
      amps: { name: '10 A CD', value: '1.5 % + 3' },
    },
    vacuum: 'Herramientas de vacío',
    vacuumLines: {
      gauge: {
        name: 'Vacuómetro',
        value: '[0 a 30 inHg|0 a 100 kPa], clase 1.6',
        hint: 'clase según EN 837-1: ± 1.6 % de la escala completa, o sea ± [0.5 inHg|1.6 kPa]',
      },
      pump: {
        name: 'Bomba de vacío manual',
        value: '[1 pulg³|16 mL] por carrera',
        hint: '[3 pulg³|50 mL] con su manguera',
      },
      jar: { name: 'Frasco', value: '[1 qt (1 L)|1 L]', hint: 'dos ramales y un sangrado de aguja' },
      manometer: {
        name: 'Manómetro de agua',
        value: '[0 a 30 inH2O, se lee a 0.1|0 a 75 hPa, se lee a 0.2]',
        hint: 'con más que eso pierde el agua',
      },
      smoke: {
        name: 'Máquina de humo',
        value: '[0 a 56 inH2O (14 kPa)|0 a 14 kPa] en su regulador',
        hint: 'póngala en [14 inH2O (3.5 kPa)|3.5 kPa] o menos',
      },
    },
    others: 'Otras herramientas',
    otherLines: {
      jumper: { name: 'Puente con fusible', value: '3 A', hint: 'diez segundos cada vez' },
      supply: { name: 'Fuente de banco', value: '12 V, limita a 3 A' },
      lamp: {
        name: 'Lámpara de prueba',
        value: 'unos 0.25 A',
        hint: 'enciende solo donde el circuito puede con ella',
      },
      led: { name: 'Probador LED', value: '1 kΩ', hint: 'baja la señal a unos 4 V' },
    },
  },
} satisfies Pick<Catalogue, 'serviceTools'>;
