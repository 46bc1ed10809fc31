import type { Catalogue } from '../translate.ts';

/** The coach: a question for every standard test, what it says beside a test, and its panel. */
export const coach = {
  coach: {
    title: 'Instructor',
    lead: 'El instructor conoce la orden de trabajo, sus lecturas y lo que usted ha hecho. No sabe qué está mal.',
    price: 'Preguntar no cuesta puntos. El registro anota que usted preguntó, y hasta dónde.',
    off: 'En una evaluación el instructor guarda silencio.',
    ask: {
      question: 'Una pregunta para pensar',
      test: 'La prueba que vale la pena',
      procedure: 'Cómo hacerla',
    },
    silent: 'Pida primero una pregunta. Vaya más a fondo solo si no le sirve.',
    thinking: 'El instructor está leyendo su registro.',
    answer: {
      question: 'Una pregunta',
      test: 'Una prueba que vale la pena',
      procedure: 'Cómo hacerla',
    },
    stale: 'Dado antes de la anotación {{entry}}.',
    staleHow: 'Usted ha anotado más desde entonces. Pregunte otra vez para un consejo con lo que sabe ahora.',
    from: 'Empiece con el banco como se encontró: la unidad del propio camión, mangueras puestas y apretadas a mano, conector conectado, llave en OFF.',
    minutes: '{{minutes}} min de libro, con la preparación y el regreso de todo a su lugar.',
    proves: 'Lo que prueba: {{proves}}',
    about: 'Puede hablar a favor o en contra de: {{items}}.',
    aboutMany: 'Puede hablar a favor o en contra de {{items}} partes a la vez.',
    proveTool:
      'Pruébela antes de confiar en ella. Lo que no pase su prueba se renueva del gabinete de refacciones y se prueba otra vez.',
    repeat_one: 'Un intento hasta ahora.',
    repeat_other: '{{count}} intentos hasta ahora.',
    repeatOf:
      'Una falla que va y viene puede faltar todas esas veces. Llegue a {{of}} intentos, y cuente cada uno.',
    repeatQuestion:
      'Usted ha visto que esto se porta bien. Si fallara solo de vez en cuando, ¿cuántas veces tendría que intentarlo antes de poder afirmarlo?',
    questions: {
      'meter-on-battery':
        'Está por creerle al multímetro. ¿Qué le ha hecho leer cuyo valor usted ya conocía?',
      'meter-leads-together': 'De una lectura baja en ohmios, ¿cuánto es de las puntas mismas?',
      'meter-current-fuse':
        'Si el multímetro no muestra corriente, ¿no la hay, o no puede mostrarla? ¿Cómo lo sabría de antemano?',
      'hand-pump-dead-end':
        'Si la aguja baja, ¿cómo sabrá que la causa no es la bomba, su manguera o su vacuómetro?',
      'jumper-proof': 'Si con el puente no pasa nada, ¿cómo sabrá que el puente dejó pasar algo?',
      'plain-lead-proof': 'Está por unir dos puntos con un cable de prueba. ¿Qué sabe usted de ese cable?',
      'look-around': '¿Qué podría aclarar un par de ojos antes de tomar una herramienta?',
      'look-plug': 'Tres circuitos pasan por un solo conector. ¿Alguien lo ha visto por dentro?',
      'look-into-hoses': 'Las mangueras se ven por fuera. ¿Qué sabe usted de su interior?',
      'look-fuse': 'Una pieza pequeña alimenta la salida y se ve en un minuto. ¿Ya la vio?',
      'listen-running': 'Con el motor en marcha hay vacío gratis. ¿Qué podrían decirle sus oídos?',
      'drag-terminals':
        'Un conector puede estar conectado y aun así hacer mal contacto. ¿Cómo lo sentiría usted?',
      'codes-and-freeze-data':
        'El módulo de control ha vigilado este camión más tiempo que usted. ¿Qué recuerda, antes de que usted toque algo?',
      'reader-at-rest':
        'Antes de poner una punta en cualquier parte: ¿qué entiende el propio módulo de control de sus dos circuitos?',
      'road-test': 'Si dejara correr ahora el monitor del camión, ¿qué diría?',
      'sense-at-plug':
        'Con la llave en ON, el módulo de control pone un voltaje en uno de los cables. ¿Qué llega al otro extremo?',
      'sense-at-controller': 'Un cable tiene dos extremos. ¿En cuál de ellos no ha mirado?',
      'sense-with-solenoid-on':
        'Dos circuitos comparten un mismo regreso. ¿Cambia uno de ellos cuando trabaja el otro?',
      'feed-at-rest': 'Mientras nadie da un comando, ¿qué debe haber en la alimentación, y a través de qué?',
      'battery-under-load': 'Una batería puede verse bien hasta que se le pide algo. ¿Se le ha pedido algo?',
      'ground-drop':
        'Cuando no pasa corriente, toda tierra se lee bien. ¿Cómo se lee esta mientras la bobina toma su corriente?',
      'feed-drop':
        'El solenoide se alimenta por comando. ¿Llega eso a la unidad cuando tiene que llevar corriente?',
      'feed-wire-drop':
        '¿Cuánto se pierde entre los dos extremos de un solo cable mientras trabaja, y solo ahí?',
      'fused-supply-drop':
        'La corriente de la batería pasa por varias partes antes de llegar al módulo de control. ¿Cuánto llega ahí bajo carga?',
      'controller-feed-on':
        'La salida recibe el comando. ¿Qué sale del módulo de control, antes de cualquier cable?',
      'command-clicks': 'Cuando el solenoide recibe el comando de moverse, ¿se mueve? ¿Todas las veces?',
      'feed-bias-10-megohm':
        'Con la unidad desconectada, ¿qué debe mostrar todavía el módulo de control en la alimentación, y qué prueba verlo?',
      'feed-bias-3-kilohm':
        'No todo voltaje tiene algo detrás. ¿Cómo distinguiría el que lo tiene del que no?',
      'lamp-on-feed':
        'Un multímetro casi no le pide nada a un cable. ¿Y si la alimentación tuviera que encender algo?',
      'lamp-on-ground': 'Sin la unidad de por medio: ¿puede la tierra llevar una corriente de verdad?',
      'sense-parted': 'Quite la unidad. ¿Qué queda en el cable de señal, y soporta una carga ligera?',
      'sense-current': 'El voltaje le dice que un cable está conectado. ¿Qué le diría qué tan bien lo está?',
      'bridge-3-to-2': 'Si usted hiciera el trabajo del interruptor, ¿lo vería el módulo de control?',
      'sense-wire-drop':
        'Mientras el cable de señal lleva su propia corriente pequeña, ¿coinciden sus dos extremos?',
      'feed-wire-ohms':
        'Con el circuito sin energía y desconectado, ¿qué lee el cable de alimentación solo, de extremo a extremo?',
      'ground-wire-ohms': 'Con el conector desconectado, ¿encuentra la cavidad 2 su camino a la batería?',
      'cavities-1-to-2-ohms': 'Alimentación y tierra están una junto a la otra. ¿Hay algo entre ellas?',
      'cavities-2-to-3-ohms': 'Tierra y señal están una junto a la otra. ¿Hay algo entre ellas?',
      'wiggle-sense': 'Su banco está quieto y la carretera no. ¿Soporta la lectura de señal que la muevan?',
      'wiggle-feed':
        'Su banco está quieto y la carretera no. ¿Soporta la alimentación que la muevan mientras trabaja?',
      'wiggle-ground':
        'Su banco está quieto y la carretera no. ¿Soporta la tierra que la muevan mientras trabaja?',
      'tug-plug-switch-closed':
        'Un contacto y un terminal están en la misma línea. ¿Cuál de los dos podría usted mantener quieto mientras mueve el otro?',
      'coil-ohms': '¿Qué debe leer el devanado a esta temperatura, sin nada más unido a él?',
      'switch-ohms':
        'Conoce el interruptor a través del arnés. ¿Cómo está su contacto solo, abierto y cerrado?',
      'jumper-clicks':
        'Alimentada por usted, sin un solo cable del camión: ¿trabaja la unidad? ¿Todas las veces?',
      'vacuum-and-sense':
        'El interruptor tiene que seguir al vacío de ida y de regreso. ¿Lo sigue? ¿Todas las veces?',
      'hold-capped':
        'Cierre todo lo que en la unidad debe estar abierto. ¿Conserva el vacío que usted hace, y cuánto tiempo lo vigiló?',
      'trip-and-reset':
        '¿Con qué poco vacío cambia el interruptor, y dónde regresa? ¿Qué instrumento puede mostrarlo?',
      'travel-vacuum':
        '¿Cuánto vacío hace falta para que cierre el interruptor? ¿Qué pediría una palanca dura, y qué un interruptor mal ajustado?',
      'engine-port-hold':
        'La unidad tiene un segundo lado que trabaja con vacío. ¿Conserva lo que se le da, en reposo y activada?',
      'vent-shut-hold':
        'Un puerto con tapa esconde lo que hay detrás. ¿Qué retiene la unidad con el puerto de aire abierto, como está en el camión?',
      'stroke-jar': 'La unidad es una bomba. ¿La ha dejado hacer vacío en algo cuyo tamaño usted conoce?',
      'slow-strokes-jar': 'Una carrera, despacio. ¿Cuánto extrae, y cuánto regresa antes de la siguiente?',
      'run-and-return':
        'El motor está en marcha. ¿Cuánto tarda en ir, y cuánto en regresar? ¿Qué frena lo uno, y qué lo otro?',
      'engine-vacuum-at-hose':
        'La unidad trabaja con vacío prestado. ¿Qué llega al extremo de la manguera, cerrada y con flujo?',
      'air-hose-breathes': 'El aire que mueve la unidad tiene que entrar y salir. ¿Está libre su camino?',
      'draw-whole-system':
        'Aquí puede dejar que la unidad haga lo que el monitor le pide en la carretera. ¿Cuánto tarda en hacer vacío, y cuánto lo retiene?',
      'draw-canister-hose-plugged':
        'Hay mucho más allá de la manguera del cánister. ¿Qué haría la unidad si no hubiera nada?',
      'smoke-whole-system': 'Por donde puede entrar aire, puede salir otra cosa. ¿Vería usted por dónde?',
      'smoke-vessel-alone':
        'Lo que hay más allá de la manguera del cánister: ¿está hermético por sí solo? Si no lo está, ¿podría verlo?',
      'smoke-unit-alone': 'La unidad sola tiene más de una pared. Si una no sellara, ¿dónde lo vería?',
      'smoke-air-hose':
        'Lo que entra por el extremo de la manguera de aire tiene que salir por algún lado. ¿Por dónde debe ser?',
      'smoke-engine-hose':
        'Una manguera larga y delgada puede parecer entera. ¿Qué le permitiría ver que lo está?',
    },
    decide: {
      title: 'Hora de decidir',
      question: 'Lea su registro desde arriba. ¿Qué pudo haber dado todo esto, y qué no?',
      test: 'No más pruebas: su evidencia señala una sola parte. Dé un veredicto y cite las anotaciones que lo demuestran.',
      steps: {
        read: 'Lea otra vez el registro, anotación por anotación.',
        choose:
          'Elija las anotaciones que una parte buena no pudo haber dado, y las que descartan a sus vecinas. Ocho como máximo.',
        tools: 'Incluya la prueba de la herramienta donde una lectura dependa de ella.',
        give: 'Dé el veredicto: la parte, qué tiene mal, y sus anotaciones.',
      },
    },
    nothingLeft: {
      title: 'Las pruebas están hechas',
      question: 'Ninguna prueba a la mano le dice más. ¿En qué coinciden todas sus lecturas?',
      test: 'No se espera que ninguna prueba estándar diga más. Pese lo que tiene, y no diga más de lo que sostiene.',
      steps: {
        read: 'Lea otra vez el registro. Busque dos anotaciones que no concuerden, y haga una de ellas otra vez.',
        moved: 'Donde algo pueda ir y venir, mueva el arnés o inténtelo otra vez, y cuente los intentos.',
        give: 'Después dé el veredicto que sus anotaciones sostienen, y cítelas.',
      },
    },
    proveRepair: {
      title: 'Demostrar la reparación',
      question: '¿Qué le mostraría que la reparación lo corrigió, y no solo lo cambió?',
      test: 'Demuestre la reparación: la prueba que señaló a la parte vieja, ahora en la instalada. Después una prueba de carretera y los códigos.',
      steps: {
        new: 'Pruebe la parte nueva antes de instalarla, donde se pueda.',
        same: 'Ya instalada, haga la misma prueba que señaló a la parte vieja.',
        restore:
          'Regrese a su lugar cada manguera, tapa y tapón. Abrazaderas apretadas a mano, conector con su seguro.',
        clear: 'Distinga los códigos que hicieron sus propias pruebas de los demás, y bórrelos.',
        drive: 'Prueba de carretera hasta que el monitor haya corrido.',
        codes: 'Lea otra vez los códigos, también los pendientes.',
      },
    },
    steps: 'Pasos',
  },
} satisfies Pick<Catalogue, 'coach'>;
