import type { Catalogue } from '../translate.ts';

/** The leak monitor and the codes of the controller, as its service data describes them. */
export const serviceMonitor = {
  serviceMonitor: {
    enable: 'Cuándo corre',
    enableText:
      'Una vez por ciclo de manejo, después de 6 horas de reposo: arranque de [39 a 95 °F|4 a 35 °C], combustible de 15 a 85 %, velocidad de crucero estable. Si no, espera otro día.',
    phases: 'Qué hace',
    phaseLines: {
      check: { name: 'Revisión del interruptor', value: 'la señal debe estar abierta sin vacío' },
      draw: { name: 'Hacer vacío', value: 'dos carreras por segundo hasta que el interruptor dispara' },
      hold: {
        name: 'Retención',
        value: 'solenoide encendido, ventilación cerrada; se cuenta hasta que el interruptor regresa',
      },
      vent: { name: 'Ventilar', value: 'solenoide apagado; el interruptor debe regresar en menos de 8 s' },
    },
    limits: 'Límites según el nivel de combustible',
    limitsText:
      'Dados para [10.6 gal|40 L] de espacio de vapor. Cambian en proporción con el espacio sobre el combustible y en el cánister; el lector muestra los ya ajustados.',
    fuel: 'Nivel',
    space: 'Espacio',
    trip: 'Dispa\u00adra antes de',
    small: 'Fuga peque\u00adña abajo de',
    pass: 'Aprue\u00adba desde',
    trips: 'Los códigos y la luz',
    tripsText:
      'Una falla pone un código pendiente. Una segunda falla en el siguiente viaje que pueda juzgar lo almacena, enciende la luz y lo hace permanente. Tres viajes aprobados seguidos apagan la luz. Borrar quita los códigos almacenados y pendientes y los datos congelados; un código permanente se va solo aprobando en la carretera.',
    codesLead:
      'Códigos genéricos que este módulo de control puede poner. Dos fallas pueden poner el mismo código; una falla puede no poner ninguno.',
    setWhen: 'Se pone cuando',
    when: {
      P0441: 'el vacío sube más rápido de lo que la bomba sola podría: menos de una carrera por litro',
      P0442: 'retención abajo del límite de fuga pequeña',
      P0446: 'no regresa en los 8 s después de ventilar',
      P0455: 'no llega al vacío dentro del límite de disparo',
      P0456: 'retención entre el límite de fuga pequeña y el límite para aprobar',
      P0457: 'no llega al vacío en los primeros manejos después de cargar combustible',
      P2004: 'accionado, el interruptor no cerró en 3 s',
      P2006: 'soltado, el interruptor no abrió en 3 s',
      P2008: 'alimentación abierta con la llave en ON: la prueba de carga abierta no baja',
      P2009: 'alimentación baja mientras está accionada, o el excitador se apagó solo',
      P2010: 'alimentación alta sin mando',
      P2014: 'señal entre 2 y 6 V',
      P2015: 'el interruptor abrió mientras se sostenía la aleta',
      P2016: 'señal cerrada con el solenoide en reposo',
      P2017: 'señal arriba de 10 V',
      P2018: 'la señal va y viene',
      P2400:
        'alimentación abierta al poner la llave en ON: nada baja el voltaje de la revisión de circuito abierto',
      P2401: 'alimentación baja con comando de encendido, o la salida se ha apagado sola',
      P2402: 'alimentación alta con comando de apagado',
      P2404: 'señal entre 2 y 6 V, o no corresponde a la fase',
      P2405: 'señal cerrada sin vacío',
      P2406: 'señal arriba de 10 V',
      P2407: 'la señal va y viene',
    },
    own: 'Los códigos puestos por las pruebas, con el conector desconectado y la llave en ON, también son códigos reales. Distíngalos de los que trajo el cliente.',
  },
} satisfies Pick<Catalogue, 'serviceMonitor'>;
