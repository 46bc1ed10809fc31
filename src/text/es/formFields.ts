/** Cómo se llaman en el formulario los campos de un escenario, y qué va en ellos, por su lugar en el archivo. */
export const formFields = {
  formFields: {
    id: {
      label: 'Nombre del archivo',
      hint: 'Letras minúsculas, dígitos y guiones sencillos. El alumno también lo ve: no debe delatar la respuesta.',
    },
    title: { label: 'Título', hint: 'En el tablero de trabajos. No debe delatar la respuesta.' },
    summary: { label: 'Resumen', hint: 'De una a tres frases para el tablero de trabajos.' },
    mode: {
      label: 'Cómo se hace',
      hint: 'En la práctica hay instructor; una evaluación se guarda lo que ayudaría. El paso a paso lleva de la mano.',
    },
    rig: { label: 'Lo que está en el banco', hint: 'Otra unidad tiene fallas, pruebas y códigos propios.' },
    level: { label: 'Nivel', hint: '1 es fácil, 4 es difícil.' },
    minutes: {
      label: 'Minutos',
      hint: 'Lo que debería necesitar un alumno cuidadoso ante la pantalla, de 5 a 240. No son minutos de manual: la referencia suele ser el doble.',
    },
    aims: { label: 'Objetivos', hint: 'Lo que el alumno debería saber hacer después, de uno a ocho.' },
    'work-order': {
      label: 'Orden de trabajo',
      number: { label: 'Número de la orden' },
      vehicle: { label: 'Vehículo' },
      complaint: { label: 'Queja', hint: 'Lo que dice el cliente.' },
      history: { label: 'Historial', hint: 'Lo que se hizo antes, en orden.' },
      renewed: {
        label: 'Piezas ya renovadas',
        hint: 'En este camión son nuevas, y se sospecha menos de ellas.',
      },
      codes: {
        label: 'Códigos registrados',
        hint: 'La comprobación dice qué códigos dejarían de verdad los recorridos.',
        code: { label: 'Código' },
        status: { label: 'Estado' },
      },
      cautions: { label: 'Precauciones', hint: 'Al menos una. Se leen antes de tomar el trabajo.' },
    },
    bench: {
      label: 'Banco',
      'ambient-celsius': {
        label: 'Temperatura, °C',
        hint: 'De −30 a 50. El cobre frío tiene menos resistencia.',
      },
      'altitude-metres': {
        label: 'Altitud, metros',
        hint: 'De −400 a 4500. En lo alto se consigue menos vacío.',
      },
      'fuel-percent': { label: 'Combustible en el tanque, por ciento' },
    },
    tools: { label: 'Herramientas a la mano', hint: 'Lo que hay en el banco para este trabajo.' },
    limits: {
      label: 'Limitar los minutos o el dinero',
      hint: 'Según la lista de precios del taller. Deje vacío uno de los dos si solo se limita el otro.',
      minutes: { label: 'Minutos de trabajo' },
      dollars: { label: 'Dólares' },
    },
    seed: {
      label: 'Semilla',
      hint: 'Cualquier palabra corta. Otra palabra sortea otro camión de la misma marca.',
      policy: { label: 'A quién le toca este camión' },
    },
    variants: {
      label: 'Variantes',
      hint: 'El trabajo tal como está arriba es la variante 1. A cada puesto de una clase le toca una. Deben ser igual de difíciles; la comprobación dice si lo son.',
    },
    drives: {
      label: 'Recorridos',
      cycles: {
        label: 'Recorridos con las fallas puestas',
        hint: 'De 0 a 40. Llenan la memoria del controlador antes de que se escriba la orden.',
      },
      refuelled: { label: 'El tanque se llenó justo antes' },
    },
    faults: {
      label: 'Fallas',
      fault: { label: 'Falla' },
      severity: { label: 'Qué tan grave' },
      'when-moved': {
        label: 'Va y viene cuando se mueve el arnés',
        hint: 'En reposo no está.',
      },
      root: { label: 'Qué la dañó' },
    },
    rules: {
      label: 'Reglas',
      off: { label: 'Reglas de método que este trabajo no pide' },
      on: { label: 'Reglas de método que este trabajo pide en todo caso' },
    },
    weights: {
      label: 'Pesar la calificación de otra manera',
      hint: 'Puntos de cien. Deben sumar cien.',
      verdict: { label: 'Veredicto' },
      evidence: { label: 'Evidencia' },
      method: { label: 'Método' },
      economy: { label: 'Economía' },
      repair: { label: 'Reparación' },
    },
    walkthrough: {
      label: 'Pasos',
      id: { label: 'Nombre del paso', hint: 'Letras minúsculas, dígitos y guiones sencillos.' },
      say: { label: 'Por qué se hace' },
      how: { label: 'Cómo se hace' },
      done: {
        label: 'Cuándo está hecho',
        hint: 'Una cosa por línea. Todas deben cumplirse en un mismo momento.',
      },
    },
    remark: { label: 'Comentario', hint: 'Qué estaba mal, y qué se aprende de ello.' },
  },
  formOptions: {
    rig: {
      'leak-detection-pump': 'bomba de detección de fugas',
      'flap-actuator': 'actuador de la compuerta',
    },
    seed: {
      policy: {
        usual: 'lo usual según cómo se hace',
        fixed: 'a todos el mismo',
        'by-seat': 'a cada vez, o puesto, uno propio',
      },
    },
    level: {
      1: '1, las pruebas de siempre',
      2: '2, otros pasaron antes',
      3: '3, la primera lectura puede engañar',
      4: '4, trabajos largos',
    },
    'work-order': { codes: { status: { stored: 'almacenado', pending: 'pendiente' } } },
  },
} as const;
