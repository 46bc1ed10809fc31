/** What went wrong with the program or the machine, and what it means for the learner. */
export const troubles = {
  troubles: {
    'store-blocked':
      'Este navegador no guarda nada (ventana privada o almacenamiento apagado). El trabajo sigue en la memoria; exporte el registro antes de cerrar la página.',
    'store-full':
      'El disco está lleno, así que el trabajo ya no se guarda. Sigue en la memoria; exporte el registro antes de cerrar la página.',
    'store-failed':
      'El trabajo no se pudo guardar en este momento. Sigue en la memoria; exporte el registro antes de cerrar la página.',
    'store-newer':
      'Está abierta otra página de Known Good con una versión distinta, así que aquí no se guarda nada. Cierre la otra página y recargue.',
    'settings-not-kept': 'Este navegador no guarda los ajustes; valen hasta que cierre la página.',
    'record-damaged':
      'El registro guardado de este trabajo no se puede leer. Expórtelo como está, o empiece el trabajo de nuevo.',
    'record-changed':
      'El registro guardado es de una versión anterior de este trabajo. Expórtelo como está, o empiece el trabajo de nuevo.',
    'record-newer':
      'El registro guardado de este trabajo es de una versión más nueva de Known Good. Recargue la página para tener esa versión, o exporte el registro como está.',
    'record-gone': 'El registro de este trabajo ya no se conserva en este dispositivo.',
    'open-elsewhere':
      'Este trabajo está abierto en otra página. Siga allí, o cierre esa página y abra el trabajo otra vez.',
    'context-lost':
      'Los gráficos de este dispositivo se fueron por un momento. Ahora el banco se dibuja de la forma sencilla; no se perdió nada.',
    'no-graphics':
      'El banco no se puede dibujar en este dispositivo. Todo se puede trabajar aún desde la lista de controles.',
    unexpected:
      'Algo en el programa se rompió ({{detail}}). Sus acciones están a salvo: exporte el registro y luego recargue.',
    'part-missing':
      'No se pudo cargar una parte del programa. No se pierde nada: recargue la página cuando vuelva la red.',
    'same-id': '{{file}}:1:1: el id "{{id}}" ya lo usa {{other}}. Dé a cada escenario el suyo.',
    'scenario-broken': 'Este trabajo no se puede abrir: {{detail}}.',
    'no-spanish':
      'No se pudo cargar el español, así que el programa sigue en inglés; elíjalo otra vez en Ajustes cuando vuelva la red.',
    'no-english':
      'No se pudo cargar el inglés (English could not be fetched), así que el programa sigue en español; elíjalo otra vez en Ajustes cuando vuelva la red.',
    exportRecord: 'Exportar el registro',
    startAnew: 'Empezar de nuevo',
    reload: 'Recargar',
    dismiss: 'Ocultar',
  },
} as const;
