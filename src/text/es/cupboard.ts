/** The parts cupboard. */
export const cupboard = {
  cupboard: {
    title: 'Gabinete de refacciones',
    lead: 'Elija qué instalar. Cada refacción se paga, acertada o no.',
    toolsLead: 'Antes del veredicto solo se pueden renovar las herramientas.',
    fit: 'Instalar: {{item}}',
    ask: '¿Instalar por {{price}}: {{item}}?',
    askFree: '¿Instalar: {{item}}?',
    askText: 'Se instala de inmediato. Se paga, estuviera mala la anterior o no, y no se devuelve.',
    askFreeText:
      'Ocupa de inmediato el lugar de la que está en el banco. No cuesta nada, pero la anterior ya no está.',
    confirm: 'Instalar',
    fitted: 'Se instaló: {{item}}.',
    fittedBefore: 'ya instalado',
    keyOffHint: 'Primero la llave en OFF y el conector desconectado, como en un camión real.',
    known: 'Unidad buena comprobada',
    knownText:
      'Una unidad que se probó y se halló buena. Póngala en el banco en lugar de la otra y haga en ella la misma prueba.',
    here: 'Ahora en el banco: {{unit}}',
    swapIn: 'Poner en el banco la unidad buena comprobada',
    swapBack: 'Regresar la unidad del camión',
    swapNeeds: 'Primero desconecte el conector y quite todo de las espigas.',
    swapNeedsPlug: 'Primero desconecte el conector.',
    swapNeedsBarbs: 'Primero quite todo de las espigas.',
    swapped: 'Ahora en el banco: {{unit}}.',
    free: 'sin cargo',
  },
} as const;
