import type { RigWords } from '../../translate.ts';

/** Lo que se llama de otro modo mientras el actuador de la aleta está en el banco: las mismas claves que en inglés. */
export const flapActuator: RigWords = {
  items: { unit: 'la unidad (actuador de aleta)' },
  theItems: { unit: 'la unidad (actuador de aleta)' },
  itemGroups: { hoses: 'Mangueras y filtro' },
  itemModes: {
    unit: {
      diaphragm: 'diafragma de la cámara: roto',
      'return-spring': 'resorte de retorno de la aleta: roto',
    },
  },
  faults: { 'diaphragm-torn': 'El diafragma de la cámara está roto.' },
  monitorPhases: {
    'switch-check': 'revisando el interruptor',
    'draw-down': 'accionando la aleta',
    hold: 'sosteniendo la aleta',
    vent: 'soltando la aleta',
  },
  drawing: {
    unit: 'actuador de aleta',
    unitTags: { truck: 'del camión' },
    ports: { 'air-port': 'AIRE', 'engine-port': 'VACÍO MOTOR' },
  },
  standardTests: {
    list: {
      'vacuum-and-sense': {
        name: 'Vacío en el puerto de aire y señal, siete veces',
        proves: 'El interruptor de posición cierra y regresa cada vez.',
      },
      'hold-capped': {
        name: 'Sostener [15 inHg|51 kPa] en el puerto de aire',
        proves: 'La cámara, su diafragma y el asiento de la válvula hacia el motor no tienen fuga.',
      },
      'switch-ohms': { proves: 'El interruptor de posición solo, sin sus cables.' },
      'look-into-hoses': {
        name: 'Mirar dentro de la manguera de aire',
        proves: 'Lo que hay en la manguera de aire, y lo que puede dañar otra vez una unidad.',
      },
      'smoke-unit-alone': { proves: 'Por dónde tiene fuga la cámara, a la vista.' },
      'engine-port-hold': {
        proves: 'El asiento de la válvula en reposo, y con el solenoide la cámara y su diafragma.',
      },
    },
  },
  coach: {
    questions: {
      'hold-capped':
        'Saca vacío a la cámara y espera. ¿Qué puede dejar entrar aire, y qué tan pronto lo vería?',
      'vacuum-and-sense':
        'La cámara se acciona a mano. ¿Qué debe hacer el voltaje de señal, y lo hace cada vez?',
    },
  },
  debrief: {
    traceLead:
      'Voltaje de señal en la unidad y vacío en la cámara durante todo el trabajo. Las marcas son sus acciones.',
  },
  inside: {
    chambers: { air: 'paso de aire', engine: 'paso del motor' },
    labels: { diaphragm: 'diafragma' },
    parts: { diaphragm: 'Diafragma y palanca', vacuumSwitch: 'Interruptor de posición' },
    plunger: {
      rest: 'en reposo: la cámara está unida al paso de aire',
      seated: 'asentado: la cámara está unida al vacío del motor',
    },
    diaphragm: {
      down: 'de regreso por su resorte',
      up: 'accionados por completo',
      between: 'accionados al {{percent}} %',
    },
  },
  service: {
    invented:
      'Datos de servicio del Camión 9 inventado. No los use en ningún vehículo real: en un camión real va primero su propia información de servicio.',
    diagramLabel:
      'Circuito: positivo de batería por la llave y el fusible de 10 A al excitador del módulo de control; cable de alimentación PK/BK a la cavidad 1 y la bobina del solenoide; cable de tierra BN de la cavidad 2 por el empalme al perno del chasis; cable de señal GY/BU de la cavidad 3 a la resistencia de polarización del módulo de control; interruptor de posición entre la cavidad 3 y la cavidad 2.',
    valueLines: {
      coil: { value: '28 Ω a [68 °F|20 °C]', hint: 'cobre: unos [0.06 Ω por °F|0.11 Ω por °C]' },
    },
    portLines: {
      air: { hint: 'por manguera al filtro; unido a la cámara en reposo' },
      engine: { hint: 'del depósito de vacío; unido a la cámara con el solenoide accionado' },
    },
    howText:
      'Con el solenoide accionado, el vacío del motor entra en la cámara y mueve su diafragma contra el resorte de retorno, y el diafragma mueve la palanca. Sin él, la cámara respira por el filtro y el resorte regresa la palanca. El interruptor de posición une la señal a tierra donde la palanca llegó al fin de su recorrido.',
  },
  serviceTests: {
    groups: { whole: 'Camión completo' },
    tests: {
      click: {
        how: 'Llave en OFF, desconecte el conector. Cable de tierra del terminal 2 de la unidad al negativo de la batería. Primero el extremo del puente en el terminal 1 de la unidad, al último la pinza de alimentación en el positivo de la batería. Enciéndalo y apáguelo tres veces, cada una menos de diez segundos, y escuche.',
      },
      coil: { good: '28 Ω ± 6 % a [68 °F|20 °C]' },
      trip: {
        title: 'Vacío en el puerto de aire, solenoide en reposo',
        good: 'la señal baja a unos 0 V antes de [7 inHg|24 kPa], y se queda',
        how: 'Conector conectado, aguja en la cavidad 3, cable rojo en la aguja, negro al negativo de la batería, llave en ON. Manguera de aire quitada y tapada, manguera de la bomba en el puerto de aire. Saque vacío y mire el voltaje de señal.',
      },
      hold: {
        title: 'Sostener ahí [15 inHg|51 kPa]',
        proves: 'cámara, diafragma, asiento de la válvula hacia el motor',
        how: 'Como antes. Deténgase en [15 inHg|51 kPa] y espere 20 s sin tocar nada. Toma más carreras que una unidad pequeña: la cámara es grande.',
      },
      points: {
        title: 'Vacío a recorrido completo, con carreras cortas',
        good: 'el interruptor cierra a [6.4 ± 0.5 inHg|21.7 ± 1.7 kPa]',
        proves: 'resorte, palanca y ajuste del interruptor',
        how: 'Como antes, desde cero, una décima de carrera a la vez. Lea el vacuómetro cuando baje el voltaje de señal. Mucho menos: el interruptor está mal ajustado. Más, o nunca: una palanca dura o corta, o una fuga.',
      },
      engine: {
        proves: 'asiento de la válvula, cámara',
        how: 'Manguera de la bomba en el puerto de vacío del motor. Saque [15 inHg|51 kPa] con el solenoide en reposo y mírelo. Luego accione el solenoide: la aguja baja mucho, porque la cámara se llena desde la bomba. Saque vacío otra vez y mírelo.',
      },
      stroke: {
        title: 'Motor en marcha, solenoide accionado, luego soltado',
        good: 'el lector dice cerrado antes de 1.5 s, y abierto antes de 1.5 s',
        proves: 'el conjunto entero, con su vacío y su salida al aire',
        how: 'Todo puesto, motor en marcha. Accione el solenoide con el lector y mire la señal; espere; suéltelo. Lento para ir: vacío o una fuga. Lento para regresar: manguera de aire o filtro.',
      },
      smoke: {
        proves: 'mangueras, cuerpo de la unidad',
        how: 'Manguera de humo en el puerto de aire de la unidad, la suya quitada y tapada. Solo gas inerte: el aire del taller hace una mezcla que arde.',
      },
    },
  },
  serviceTools: {
    cautionLines: {
      tank: 'Con el motor en marcha: manos, mangas y cables lejos de bandas, ventilador y todo lo caliente.',
      sparks:
        'Chispas solo lejos de la unidad: conecte ahí primero el puente y enciéndalo del lado de la batería.',
    },
  },
  serviceMonitor: {
    enableText: 'Una vez por ciclo de manejo, a velocidad constante. Si no, espera otro día.',
    phaseLines: {
      check: { value: 'la señal debe estar abierta con el solenoide en reposo' },
      draw: { name: 'Accionar', value: 'solenoide accionado; el interruptor debe cerrar en 3 s' },
      hold: { value: 'solenoide accionado por 4 s; el interruptor debe seguir cerrado' },
      vent: { name: 'Soltar', value: 'solenoide en reposo; el interruptor debe abrir en 3 s' },
    },
    limits: 'Límites',
    limitsText: 'Los mismos a todo nivel de combustible.',
    trip: 'Accionada en',
    small: 'Sostenida por',
    pass: 'De regreso en',
  },
  reader: { groups: { monitor: 'Monitor de la aleta' }, freezeLines: { strokes: 'Accionamientos' } },
  roadTest: {
    lead: 'El camión sale por ciclos de manejo completos: un arranque, un tramo a velocidad constante en que el módulo de control acciona la aleta, y de regreso. El banco espera.',
    columns: { monitor: 'Monitor de la aleta', strokes: 'Accionamientos', trip: 'Accionada en' },
    holdLimit: 'debe seguir {{pass}} s',
    limitsShort: 'La aleta se acciona en {{trip}} s y sigue accionada {{pass}} s.',
    limitsNote: 'Los límites son los mismos a todo nivel de combustible.',
  },
};
