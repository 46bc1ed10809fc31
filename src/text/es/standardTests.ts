import type { Catalogue } from '../translate.ts';

/** The standard tests of the rig: their names, what each proves, and the words of their procedures. */
export const standardTests = {
  standardTests: {
    list: {
      'meter-on-battery': {
        name: 'Multímetro en la batería',
        proves: 'Multímetro, puntas y batería del multímetro: una fuente conocida se lee como lo que es.',
      },
      'meter-leads-together': {
        name: 'Puntas del multímetro juntas, ohmios',
        proves: 'Las puntas están enteras; lo que leen ahora se resta de toda lectura baja.',
      },
      'meter-current-fuse': {
        name: 'Miliamperios por el probador LED desde la fuente de banco',
        proves: 'El fusible del borne de miliamperios está entero.',
      },
      'hand-pump-dead-end': {
        name: 'Bomba de vacío manual y vacuómetro con la manguera cerrada, 60 s',
        proves: 'Bomba, manguera, cono y vacuómetro: lo que se pierda después no es de ellos.',
      },
      'jumper-proof': {
        name: 'Puente con fusible entre la batería y el multímetro',
        proves: 'El fusible y el interruptor del puente están enteros.',
      },
      'plain-lead-proof': {
        name: 'Cable de prueba entre las puntas del multímetro, continuidad',
        proves: 'El cable de prueba está entero.',
      },
      'look-around': {
        name: 'Revisión visual de todo lo que está a la vista',
        proves:
          'Cables rozados, rajaduras, grietas, mangueras aplastadas, un tapón de llenado flojo y un filtro sucio, donde se puedan ver.',
      },
      'look-plug': {
        name: 'Revisión del conector desconectado por dentro',
        proves: 'Corrosión, agua y terminales muy abiertos en el conector.',
      },
      'look-into-hoses': {
        name: 'Revisión de la manguera del cánister y la manguera de aire por dentro',
        proves: 'Carbón, combustible, un paso obstruido, una espiga agrietada.',
      },
      'look-fuse': {
        name: 'Sacar el fusible y mirarlo',
        proves: 'El elemento del fusible está entero o fundido.',
      },
      'listen-running': {
        name: 'Escuchar con el motor en marcha',
        proves: 'Fugas que el vacío del motor hace audibles.',
      },
      'drag-terminals': {
        name: 'Calibre de arrastre en los tres terminales del arnés',
        proves: 'Qué terminal agarra y cuál está flojo.',
      },
      'codes-and-freeze-data': {
        name: 'Leer códigos y datos congelados',
        proves: 'Lo que el módulo de control ha visto fallar, antes de tocar nada.',
      },
      'reader-at-rest': {
        name: 'Lector: señal en reposo, salida de alimentación al dar el comando',
        proves: 'Lo que el propio módulo de control entiende de los dos circuitos.',
      },
      'road-test': {
        name: 'Prueba de carretera de tres ciclos',
        proves: 'Si el monitor corre, y si aprueba.',
      },
      'sense-at-plug': {
        name: 'Señal en el conector, llave en ON, contra el negativo de la batería',
        proves: 'Pull-up, cable de señal e interruptor abierto: unos 9 V.',
      },
      'sense-at-controller': {
        name: 'Señal en el extremo del módulo de control, llave en ON',
        proves: 'Comparada con la lectura en el conector: el cable de señal entre los dos puntos.',
      },
      'sense-with-solenoid-on': {
        name: 'Señal con el solenoide encendido',
        proves: 'La tierra compartida: si está mala, sube la señal en cuanto la bobina toma corriente.',
      },
      'feed-at-rest': {
        name: 'Alimentación en el conector, sin comando',
        proves: 'Salida apagada, bobina conectada, ningún voltaje ajeno en la alimentación.',
      },
      'battery-under-load': {
        name: 'Batería con el solenoide encendido',
        proves: 'La batería mantiene su voltaje bajo carga.',
      },
      'ground-drop': {
        name: 'Caída de tierra, solenoide encendido',
        proves: 'Cable de tierra, empalme y perno bajo carga: 0.10 V como máximo.',
      },
      'feed-drop': {
        name: 'Caída de alimentación, solenoide encendido',
        proves: 'Todo desde la batería hasta la cavidad 1 bajo carga: 0.30 V como máximo.',
      },
      'feed-wire-drop': {
        name: 'Caída del cable de alimentación solo, solenoide encendido',
        proves: 'El cable de alimentación entre sus dos extremos.',
      },
      'fused-supply-drop': {
        name: 'Caída de la batería al lado de carga del fusible, solenoide encendido',
        proves: 'Contactos de la llave y fusible bajo carga.',
      },
      'controller-feed-on': {
        name: 'Alimentación en el extremo del módulo de control, solenoide encendido',
        proves: 'Lo que entrega la salida antes de cualquier cable.',
      },
      'command-clicks': {
        name: 'Clics al comando, tres veces',
        proves: 'Salida de alimentación, cables, bobina y émbolo juntos.',
      },
      'feed-bias-10-megohm': {
        name: 'Polarización en la alimentación desconectada, entrada de 10 MΩ',
        proves: 'El cable de alimentación llega al módulo de control; esto no es una fuente.',
      },
      'feed-bias-3-kilohm': {
        name: 'Polarización en la alimentación desconectada, entrada de 3 kΩ',
        proves: 'El voltaje de la alimentación desconectada es un fantasma y desaparece bajo carga.',
      },
      'lamp-on-feed': {
        name: 'Lámpara de prueba en la alimentación desconectada',
        proves: 'Salida, fusible y cable de alimentación conducen corriente.',
      },
      'lamp-on-ground': {
        name: 'Lámpara de prueba del positivo de la batería a la tierra desconectada, con la caída',
        proves: 'El cable de tierra conduce corriente.',
      },
      'sense-parted': {
        name: 'Señal en la mitad del arnés, sola y con el probador LED',
        proves: 'Pull-up y cable de señal sin la unidad, y que detrás del voltaje hay algo.',
      },
      'sense-current': {
        name: 'Corriente de pull-up del cable de señal a tierra',
        proves: 'La resistencia del pull-up y del cable de señal juntos: unos 4 mA.',
      },
      'bridge-3-to-2': {
        name: 'Terminales 3 y 2 del arnés unidos, mirando el lector',
        proves: 'Módulo de control, cable de señal y tierra: el lector tiene que decir cerrado.',
      },
      'sense-wire-drop': {
        name: 'Caída del cable de señal, terminales 3 y 2 unidos',
        proves: 'El cable de señal entre sus dos extremos, con su propia corriente.',
      },
      'feed-wire-ohms': {
        name: 'Ohmios del cable de alimentación, conector desconectado',
        proves: 'El cable de alimentación no está abierto.',
      },
      'ground-wire-ohms': {
        name: 'Ohmios del cable de tierra, conector desconectado',
        proves: 'El cable de tierra no está abierto; bajo carga se prueba mejor.',
      },
      'cavities-1-to-2-ohms': {
        name: 'Ohmios del terminal 1 al 2 del arnés, conector desconectado',
        proves: 'Ni corto ni agua entre alimentación y tierra.',
      },
      'cavities-2-to-3-ohms': {
        name: 'Ohmios del terminal 2 al 3 del arnés, conector desconectado',
        proves: 'Ni corto ni agua entre tierra y señal.',
      },
      'wiggle-sense': {
        name: 'Señal vigilada mientras se mueven el cable y el conector',
        proves: 'Un cable de señal que va y viene.',
      },
      'wiggle-feed': {
        name: 'Alimentación vigilada mientras se mueven el cable y el conector, solenoide encendido',
        proves: 'Un cable de alimentación o un terminal 1 que van y vienen.',
      },
      'wiggle-ground': {
        name: 'Caída de tierra vigilada mientras se mueven el cable y el conector, solenoide encendido',
        proves: 'Un cable de tierra o un terminal 2 que van y vienen.',
      },
      'tug-plug-switch-closed': {
        name: 'Tirones al conector mientras el vacío mantiene cerrado el interruptor',
        proves: 'Terminal o contacto: la unidad está quieta, así que un salto es del conector.',
      },
      'coil-ohms': {
        name: 'Ohmios de la bobina, conector desconectado',
        proves: 'Devanado: 32 Ω ± 6 % a [68 °F (20 °C)|20 °C].',
      },
      'switch-ohms': {
        name: 'Ohmios del interruptor, en reposo y con [5 inHg|17 kPa], conector desconectado',
        proves: 'El contacto abre, cierra, y cierra bien.',
      },
      'jumper-clicks': {
        name: 'Nueve clics con el puente con fusible, lámpara de prueba en paralelo con la bobina',
        proves: 'Bobina y émbolo sin el camión: un clic cada vez.',
      },
      'vacuum-and-sense': {
        name: 'Vacío y señal, siete veces',
        proves: 'El interruptor cierra y regresa cada vez.',
      },
      'hold-capped': {
        name: 'Retención a [15 inHg|51 kPa], unidad sola, con tapa',
        proves: 'Nada tiene fuga en el lado del cánister de la unidad.',
      },
      'trip-and-reset': {
        name: 'Disparo y regreso en el manómetro de agua',
        proves: 'Los dos puntos propios del interruptor, que ningún vacuómetro manual distingue.',
      },
      'travel-vacuum': {
        name: 'Vacío a recorrido completo',
        proves:
          'Cuánto vacío necesita la palanca para llegar a su interruptor: resorte, palanca, diafragma y ajuste en una sola cifra.',
      },
      'engine-port-hold': {
        name: 'Puerto de vacío del motor a [15 inHg|51 kPa], solenoide apagado y encendido',
        proves:
          'Asiento de la válvula y lado de mando del diafragma; la caída al encenderlo es el émbolo que se mueve.',
      },
      'vent-shut-hold': {
        name: 'Ventilación cerrada por vacío del motor, vacío en el puerto del cánister, puerto de aire abierto',
        proves: 'El asiento de ventilación cierra, sella y vuelve a abrir a tiempo.',
      },
      'stroke-jar': {
        name: 'Prueba de carreras con el frasco',
        proves:
          'Diafragma, resorte y las dos válvulas de retención en trabajo, y que lo extraído se conserva.',
      },
      'slow-strokes-jar': {
        name: 'Tres carreras lentas con frasco y manómetro',
        proves:
          'Lo que regresa entre carreras es de la válvula de retención de entrada; una carrera corta es de la de salida, del diafragma o del resorte.',
      },
      'run-and-return': {
        name: 'Accionado y soltado, motor en marcha',
        proves: 'El actuador entero como trabaja en el camino, con los tiempos de ida y de regreso.',
      },
      'engine-vacuum-at-hose': {
        name: 'Vacío del motor en su manguera, cerrada y con flujo',
        proves: 'La manguera de vacío del motor: una fuga, o un aplastamiento que solo se nota con flujo.',
      },
      'air-hose-breathes': {
        name: 'Bomba de vacío manual en la manguera de aire',
        proves: 'La manguera de aire y el filtro dejan pasar el aire: la aguja se queda en cero.',
      },
      'draw-whole-system': {
        name: 'La unidad hace vacío en todo el sistema y lo retiene',
        proves:
          'La prueba del propio monitor, en el banco: segundos hasta el disparo, segundos de retención.',
      },
      'draw-canister-hose-plugged': {
        name: 'Lo mismo con la manguera del cánister taponada',
        proves: 'Aislamiento: unidad y circuitos sin la manguera ni el recipiente.',
      },
      'smoke-whole-system': {
        name: 'Humo por la unidad hacia todo el sistema',
        proves: 'Por dónde tiene fuga el sistema completo.',
      },
      'smoke-vessel-alone': {
        name: 'Humo en la manguera del cánister, sin la unidad',
        proves: 'Aislamiento: manguera, cánister, tanque y tapón de llenado sin la unidad.',
      },
      'smoke-unit-alone': {
        name: 'Humo en la unidad sola',
        proves: 'Cápsula o grieta del cuerpo: el humo dice cuál.',
      },
      'smoke-air-hose': {
        name: 'Humo en la manguera de aire',
        proves: 'La manguera de aire y el filtro están libres.',
      },
      'smoke-engine-hose': {
        name: 'Humo en la manguera de vacío del motor',
        proves: 'Una rajadura o un aplastamiento de la manguera de vacío del motor.',
      },
    },
    parts: { setUp: 'Preparación', work: 'Prueba', undo: 'Dejar como estaba', cautions: 'Precauciones' },
    steps: {
      onPort: '{{item}} en el {{site}}, apretada a mano',
      onEnd: '{{item}} en el {{site}}',
      wait: 'espere {{seconds}} s',
      steady: 'espere hasta que la lectura se detenga',
      strokes: 'bombee hasta que {{goal}}, {{most}} carreras como máximo',
      partStrokes: 'bombee con carreras cortas hasta que {{goal}}, {{most}} como máximo',
      until: 'espere hasta que {{goal}}, {{seconds}} s como máximo',
      repeat: 'haga esto {{times}} veces:',
      refill: 'llene otra vez el manómetro si perdió el agua',
      stroke: 'una carrera de la bomba',
      partStroke: 'una carrera de la bomba al {{percent}} % de su recorrido',
      range: 'fije el rango de 60 V',
      look: 'mire {{place}}',
      listen: 'escuche en {{place}}',
      wiggle: 'mueva {{place}}',
      drag: 'sienta el terminal {{cavity}} con el calibre de arrastre',
      road: 'haga {{cycles}} ciclos de manejo',
      smoke: 'máquina de humo con gas inerte a {{pressure}}',
      bleedShut: 'sangrado de aguja cerrado',
      smokeOff: 'máquina de humo apagada',
      command: 'con el lector, dé el comando al solenoide: {{command}}',
      record: 'deje que el multímetro registre; en pantalla: {{show}}',
      release: 'alivio abierto',
      releaseShut: 'alivio cerrado',
    },
    /** After 'hasta que', so in the subjunctive. */
    goals: {
      'gauge-at-least': 'el vacuómetro marque {{vacuum}}',
      'gauge-halved': 'el vacuómetro haya bajado a la mitad',
      open: 'el lector diga que el interruptor está abierto',
      closed: 'el lector diga que el interruptor está cerrado',
    },
    readings: {
      meter: 'anote la lectura del multímetro',
      tone: 'anote si suena el tono',
      'meter-battery-sign': 'anote si el multímetro muestra su señal de batería',
      gauge: 'anote la lectura del vacuómetro',
      'gauge-lost': 'anote lo que el vacuómetro ha perdido desde entonces',
      manometer: 'anote la lectura del manómetro de agua',
      'manometer-at-goal': 'anote la lectura del manómetro de agua en ese momento',
      'manometer-lost': 'anote lo que ha regresado en el manómetro de agua desde entonces',
      'reader-volts': 'anote el voltaje de señal en el lector',
      'reader-state': 'anote lo que el lector dice del interruptor',
      'reader-driver': 'anote lo que el lector dice de la salida de alimentación',
      'click-on': 'anote si hizo clic al activarse',
      'click-off': 'anote si hizo clic al soltarse',
      lamp: 'anote cómo está la lámpara de prueba: apagada, débil o brillante',
      led: 'anote cómo está el probador LED',
      smoke: 'anote por dónde sale humo, la presión y la bolita de flujo',
      finding: 'anote lo que encuentre',
      codes: 'anote los códigos y su estado',
      'freeze-data': 'anote los datos congelados',
      drive: 'anote cómo terminó cada ciclo de manejo',
      fuse: 'anote cómo está el elemento del fusible',
      'jumper-fuse': 'anote cómo está el fusible del puente',
      'seconds-taken': 'anote cuántos segundos tardó',
      'strokes-taken': 'anote cuántas carreras hicieron falta',
    },
  },
} satisfies Pick<Catalogue, 'standardTests'>;
