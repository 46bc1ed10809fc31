import type { Catalogue } from '../translate.ts';

/** Debrief. */
export const debrief = {
  debrief: {
    title: 'Revisión',
    right: 'Su veredicto fue correcto.',
    rightUnproven:
      'Correcto, pero no demostrado: según su propia evidencia, bien pudo haber sido otra cosa. Por eso cuenta poco. En el próximo camión la misma suposición puede estar equivocada.',
    wrong: 'Su veredicto no fue correcto.',
    named: 'Usted señaló {{item}}.',
    namedMode: 'Lo que dijo que tiene mal: {{mode}}.',
    modeRight: 'Así es.',
    modeWrong: 'No es así.',
    yours: 'Su veredicto',
    citedBy: 'Citó: {{entries}}.',
    citedNone: 'Sin citar ninguna anotación.',
    truth: 'Lo que estaba mal',
    truthItem: '{{fault}} Se corrige renovando: {{item}}.',
    score: 'Puntaje',
    of: '{{points}} de {{of}}',
    total: '{{total}} de 100',
    parts: {
      verdict: 'Veredicto',
      evidence: 'Evidencia',
      method: 'Método',
      economy: 'Economía',
      repair: 'Reparación demostrada',
    },
    deduction: 'Seguridad: {{points}} puntos menos.',
    capped: 'Una falta grave de seguridad limita el puntaje a {{points}}.',
    method: 'Método',
    kept: 'cumplida',
    missed: 'no cumplida',
    noOccasion: 'sin ocasión',
    keptBy: 'lo muestra: {{entries}}',
    keptAt: 'hecho en {{times}}',
    missedAt: 'faltó en {{times}}',
    tooFew_one: 'El registro lo muestra una vez, de las {{of}} que se piden: en {{times}}.',
    tooFew_other: 'El registro lo muestra {{count}} veces, de las {{of}} que se piden: en {{times}}.',
    repairLacks: 'Falta:',
    ruleItems: 'No se hizo para: {{items}}.',
    askedByJob: 'Este trabajo la pide.',
    gap: 'El registro no lo muestra, o no por completo.',
    safety: 'Seguridad',
    noBreach: 'Ninguna falta a las reglas de seguridad.',
    breachAt: 'en {{time}}, {{grade}}',
    cost: 'Dinero y minutos',
    sum: 'Refacciones {{money}} · {{minutes}} minutos de libro',
    noParts: 'No se instaló ninguna refacción.',
    needed: 'hacía falta',
    notNeeded: 'no hacía falta',
    trace: 'Lo que pasó en realidad',
    traceLead:
      'Voltaje de señal en la unidad y vacío en el paso del cánister durante todo el trabajo. Las marcas son sus acciones.',
    sense: 'señal, V',
    vacuum: 'vacío, [inHg|kPa]',
    time: 'tiempo',
    traceSummary:
      'El voltaje de señal fue de {{lowV}} a {{highV}} V, el vacío de {{low}} a {{high}}, en {{minutes}} minutos.',
    marks: 'Acciones en la gráfica',
    remark: 'Del autor de este trabajo',
    export: 'Exportar el registro',
    log: 'Su registro',
    logEmpty: 'No se anotó nada.',
    cited: 'citada',
  },
  /** What kept a repair from counting as proven. */
  repairGaps: {
    'verdict-wrong':
      'un veredicto correcto. Solo se puede demostrar la reparación de lo que de verdad estaba mal.',
    'not-fitted': 'la parte misma. Lo que usted señaló nunca se renovó.',
    'road-failed':
      'un aprobado. La última prueba de carretera después de la reparación salió reprobada: el camión no está reparado.',
    'vacuum-retest':
      'la prueba de vacío en la parte ya instalada: señal leída abierta en reposo, cerrada con vacío y el puerto de aire con tapa, abierta otra vez después del alivio. Una prueba de carretera aprobada no la sustituye.',
    'click-retest': 'un clic con el conector conectado después de la reparación, por comando del lector.',
    'feed-loaded': 'el lado de alimentación leído con el solenoide encendido, después de la reparación.',
    'ground-loaded': 'el lado de tierra leído con el solenoide encendido, después de la reparación.',
    'monitor-pass': 'una prueba de carretera después de la reparación en la que el monitor corrió y aprobó.',
    'part-bought': 'mesura. No había nada mal, y se pagó una refacción.',
    'not-restored':
      'algo de esto: unidad propia, mangueras, abrazaderas, conector y fusible en su lugar; cables, agujas, tapas y tapones fuera; llave en OFF.',
  },
  /** Short names of actions, for marks on the chart and lists; steps of a procedure are said in them, too. */
} satisfies Pick<Catalogue, 'debrief' | 'repairGaps'>;
