import type { Catalogue } from '../translate.ts';

/** Lo que el banco dice de un escenario antes de que alguien lo trabaje. */
export const proof: Pick<Catalogue, 'proof'> = {
  proof: {
    working: 'Se está calculando …',
    fit: 'Listo para repartir.',
    unfit: 'Todavía no está listo para repartir.',
    solvedBy:
      'Se resuelve con {{count}} pruebas hechas, {{minutes}} minutos de manual y {{money}} con la reparación:',
    notSolved: 'Las mejores pruebas se acaban después de {{count}}:',
    needs: 'Hace falta: {{tools}}.',
    rivals: 'Después de la queja, la verdad tiene {{chance}}. Qué más podría ser: {{rivals}}.',
    noRivals: 'Después de la queja, la verdad tiene {{chance}} y nada más es probable.',
    rival: '{{item}} {{chance}}',
    difficulty: 'Nivel {{level}} según la estimación: {{because}}.',
    plain: 'Nivel {{level}} según la estimación: hay una sola falla y las pruebas usuales la muestran.',
    noCodes: 'ningún código',
    stored: '{{codes}} guardado',
    pending: '{{codes}} pendiente',
    because: {
      'many-tests': 'muchas pruebas distintas',
      'favourite-is-wrong': 'la queja apunta a otra cosa',
      'few-tests-show-it': 'casi ninguna prueba la muestra',
      'comes-and-goes': 'va y viene',
      'tool-is-bad': 'una herramienta está mala',
      'two-things-wrong': 'hay dos fallas',
      'nothing-is-wrong': 'el camión no tiene ninguna falla',
      'root-behind-it': 'hay una causa detrás de la falla',
      'fine-instrument': 'hace falta manómetro, frasco o humo',
    },
    where: {
      id: 'nombre del archivo',
      title: 'título',
      summary: 'resumen',
      seed: 'semilla',
      aims: 'objetivos',
      complaint: 'queja',
      history: 'historial',
    },
    variants: {
      only: 'la variante {{variant}}',
      mild: 'la variante {{variant}} en su grado más leve',
      worst: 'la variante {{variant}} en su peor grado',
      line: '{{variant}}: {{faults}}; par de {{minutes}} minutos de manual y {{money}}.',
      nothing: 'ninguna falla',
    },
    findings: {
      'variant-not-solvable':
        'Para {{variant}}, ningún plan de pruebas termina en una demostración cierta. Agrave su falla o elija otra.',
      'variant-codes-differ':
        'Para {{variant}}, la orden indica {{stated}}, pero el controlador tiene {{held}}. Dele estos códigos propios, o cambie sus recorridos y su gravedad.',
      'variant-answer-in-text':
        'Los textos anteriores al veredicto delatan lo que está mal en {{variant}}: “{{fault}}” Diga ahí lo que vio el cliente.',
      'variant-learners': '{{variant}}: {{finding}}',
      'variants-minutes':
        'Las variantes no son igual de difíciles: el par es de {{from}} minutos de manual para {{least}} y de {{to}} para {{most}}, con más de un 20 % de diferencia. Estreche el rango o elija una falla que se encuentre con las mismas pruebas.',
      'variants-money':
        'Las variantes no cuestan lo mismo: las piezas salen en {{from}} para {{least}} y en {{to}} para {{most}}, con más de un 20 % de diferencia. Elija fallas de la misma pieza o de piezas que cuesten lo mismo.',
      'not-solvable':
        'Ningún plan de pruebas termina en una demostración verdadera. Agrave la falla, quite una de las dos, o elija una que alguna prueba muestre.',
      'tools-lacking':
        'Las herramientas a la mano no comprueban lo que está mal. Agregue a las herramientas: {{tools}}.',
      'tools-lacking-any':
        'Las herramientas a la mano no comprueban lo que está mal. Agregue una de estas a las herramientas: {{tools}}.',
      'codes-differ':
        'La orden de trabajo indica {{stated}}, pero después de estos recorridos el controlador tiene {{held}}. Escriba estos códigos, o cambie los recorridos y la gravedad.',
      'answer-in-text':
        'Este texto delata la respuesta ({{where}}): “{{fault}}” Diga ahí lo que vio el cliente, no lo que está mal.',
      'prior-below':
        'La queja le deja a la verdad {{figure}}, menos de {{limit}}: nadie pensaría en ella. Elija una falla más común, o una queja y códigos que apunten a ella.',
      'prior-above':
        'La queja le deja a la verdad {{figure}}, más de {{limit}}: se sabe antes de la primera prueba. Elija una falla más rara, o códigos que también otras ponen.',
      'median-below':
        'El {{learner}} llega a {{figure}} de 100 y debe llegar a {{limit}}: el buen trabajo no se premia. Elija una falla que las pruebas muestren con más claridad, o quite reglas que este trabajo no necesita.',
      'median-above':
        'El {{learner}} llega a {{figure}} de 100 y no debe pasar de {{limit}}: el mal trabajo se premia. Que la queja apunte menos a la verdad, o que la demostración tenga más pasos.',
      'not-below-by-the-book':
        'El {{learner}} llega a {{figure}} y debe quedar debajo del que va por el manual, {{limit}}. Elija una falla, o una herramienta mala, que castigue la prisa.',
      'careful-names-below':
        'El alumno cuidadoso halla la verdad en {{figure}} de sus trabajos, menos de {{limit}}. Agrave la falla, o elija una que no sea tan rara en aparecer.',
      'limit-minutes':
        'La referencia toma {{par}} minutos de libro, y el límite de {{limit}} no le deja un cuarto de sobra. Dé {{wanted}} o más, o acorte el trabajo.',
      'limit-dollars':
        'Las refacciones que pide la reparación cuestan {{par}}, y el límite es {{limit}}. Dé {{wanted}} o más, o elija una falla más barata.',
      'not-told-apart':
        'Ninguna prueba distingue entre estos: {{items}}. Un veredicto por cualquiera cuenta como correcto.',
      'level-differs':
        'Usted le da el nivel {{level}}, la estimación es {{estimate}}. Revise para qué alumnos es.',
      'other-shop':
        'El par y los alumnos se calculan para el taller de los trabajos incluidos: su temperatura, su altitud y su nivel de combustible. Su banco es distinto: tome las cifras como cercanas, no exactas.',
    },
    learners: {
      careful: 'alumno cuidadoso',
      'by-the-book': 'alumno que va por el manual',
      hasty: 'alumno apurado',
      'parts-changer': 'cambiapiezas',
      guesser: 'adivinador',
      reckless: 'alumno imprudente',
      'logs-everything': 'que anota todo',
      'names-the-favourite': 'que nombra lo más probable',
      'marks-all': 'que marca todos los sospechosos',
      'spams-one-test': 'que repite una sola prueba',
      'swaps-first': 'que cambia primero',
      'told-the-answer': 'que sabía la respuesta',
    },
  },
};
