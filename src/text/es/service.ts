import type { Catalogue } from '../translate.ts';

/** Service data of the demonstration rig: circuit and plug. Tests, monitor and tools stand in files of their own. */
export const service = {
  service: {
    invented:
      'Datos de servicio del Camión 14, que es inventado. No los use en ningún vehículo real: en un camión real va primero su propia información de servicio.',
    pagesLabel: 'Páginas de los datos de servicio',
    pages: {
      circuit: 'Circuito',
      tests: 'Pruebas',
      monitor: 'Monitor',
      codes: 'Códigos',
      tools: 'Herramientas',
    },
    diagram: 'Diagrama del circuito',
    diagramLabel:
      'Circuito: positivo de la batería por la llave y el fusible de 10 A a la salida del módulo de control; cable de alimentación PK/BK a la cavidad 1 y la bobina del solenoide; cable de tierra BN de la cavidad 2 por el empalme al perno del chasis; cable de señal GY/BU de la cavidad 3 al pull-up del módulo de control; interruptor de vacío entre la cavidad 3 y la cavidad 2.',
    pinout: 'Cavidades del conector de tres vías',
    cavity: 'Cavidad',
    function: 'Función',
    wire: 'Cable',
    pins: {
      1: {
        function: 'alimentación del solenoide, desde el módulo de control',
        wire: 'PK/BK',
        size: '[11.5 pies, 20 AWG|3.5 m, 0.5 mm²]',
      },
      2: {
        function: 'tierra, por el empalme al perno del chasis',
        wire: 'BN',
        size: '[5 pies, 20 AWG|1.5 m, 0.5 mm²]',
      },
      3: {
        function: 'señal del interruptor, al módulo de control',
        wire: 'GY/BU',
        size: '[11.5 pies, 22 AWG|3.5 m, 0.35 mm²]',
      },
    },
    letterLine:
      'PK rosa · BK negro · BN café · GY gris · BU azul. El primer color es el del cable, el segundo el de su raya.',
    values: 'Valores del circuito',
    valueLines: {
      supply: {
        name: 'Fusible F, 10 A',
        value: 'alimenta solo la salida del solenoide',
        hint: 'el módulo de control tiene otro',
      },
      driver: {
        name: 'Salida de alimentación',
        value: 'del lado positivo, limita a 3 A',
        hint: 'después queda apagada hasta poner la llave en OFF',
      },
      bias: {
        name: 'Alimentación, conector desconectado, sin comando',
        value: '5.5 a 5.9 V',
        hint: 'un hilo de corriente para detectar circuito abierto: desaparece con cualquier carga',
      },
      coil: {
        name: 'Bobina del solenoide',
        value: '32 Ω a [68 °F|20 °C]',
        hint: 'cobre: cerca de [0.07 Ω por °F|0.13 Ω por °C]',
      },
      pull: {
        name: 'Señal, interruptor abierto, llave en ON',
        value: '8.9 V',
        hint: '9.1 V detrás de 2.2 kΩ, en el módulo de control',
      },
      sense: {
        name: 'La señal se toma como',
        value: 'cerrada abajo de 2 V, abierta arriba de 6 V',
        hint: 'alta arriba de 10 V, no creíble en medio',
      },
      most: { name: 'Lo más que puede ver la entrada de señal', value: '16 V' },
    },
    ports: 'Puertos de la unidad',
    portLines: {
      canister: {
        name: 'Cánister',
        value: 'espiga de [5/16 pulg|8 mm]',
        hint: 'al cánister y al tanque que hay detrás',
      },
      air: {
        name: 'Aire',
        value: 'espiga de [5/16 pulg|8 mm]',
        hint: 'por manguera al filtro; unido al lado del cánister en reposo',
      },
      engine: {
        name: 'Vacío del motor',
        value: 'espiga de [5/32 pulg|4 mm]',
        hint: 'unido a la cámara de mando con el solenoide encendido',
      },
    },
    how: 'Cómo trabaja la unidad',
    howText:
      'Con el solenoide encendido, el vacío del motor levanta el diafragma de la bomba y extrae aire del lado del cánister por la válvula de retención de entrada. Con el solenoide apagado, un resorte empuja el diafragma hacia abajo y el aire sale por la válvula de retención de salida. Las primeras carreras cierran el asiento de ventilación. Queda cerrado de carrera a carrera y abre de 2 a 5 s después de la última. El interruptor de vacío une la señal a tierra cuando el lado del cánister pasa su punto de disparo.',
    /** Short: printed in the diagram between its wires. */
    labels: {
      battery: 'batería',
      key: 'llave',
      fuse: 'F 10 A',
      controller: 'módulo de control',
      driver: 'salida',
      coil: 'bobina',
      switch: 'interr.',
      unit: 'unidad',
      splice: 'empal.',
      stud: 'perno chasis',
      sense: 'señal',
      feed: 'alim.',
      ground: 'tierra',
    },
  },
} satisfies Pick<Catalogue, 'service'>;
