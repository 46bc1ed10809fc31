import type { Catalogue } from '../translate.ts';

/** Standard tests of the rig: what is done, what is good, what it proves, and how. */
export const serviceTests = {
  serviceTests: {
    lead: 'Pruebe sin prisa, dos o tres veces, con las uniones apretadas a mano. Pruebe primero las herramientas.',
    good: 'Bueno',
    proves: 'Prueba',
    groups: {
      tools: 'Primero las herramientas',
      electric: 'Eléctricas',
      vacuum: 'Vacío',
      whole: 'Sistema completo',
    },
    tests: {
      meter: {
        title: 'Multímetro en una fuente conocida',
        good: 'unos 12.6 V en una batería cargada; puntas juntas, 0.3 Ω como máximo',
        proves: 'multímetro, sus puntas, su fusible',
        how: 'Voltios CD, punta roja en el positivo de la batería, negra en el negativo. Antes de confiar en un cero, y otra vez después de una sorpresa. Ohmios bajos: primero las puntas juntas, y reste eso. Corriente: pruebe el borne y su fusible en la fuente de banco a través de una carga conocida.',
      },
      pump: {
        title: 'Bomba de vacío manual y vacuómetro, manguera cerrada',
        good: 'aguja en cero antes; [15 inHg|51 kPa] pierden menos del ancho de la aguja en 60 s',
        proves: 'bomba, manguera, cono, vacuómetro',
        how: 'Ponga un tapón en el cono de la manguera de la bomba, haga [15 inHg|51 kPa] y vigile la aguja un minuto. Lo que se pierda ahora es de la bomba, no de la unidad.',
      },
      click: {
        title: '12 V con fusible en alimentación, tierra en tierra, conector desconectado',
        good: 'un clic al encender, un clic al apagar, todas las veces',
        proves: 'bobina, émbolo',
        how: 'Llave en OFF, desconecte el conector, ponga el tapón a la manguera del cánister. Cable de prueba del terminal 2 de la unidad al negativo de la batería. Primero el otro extremo del puente en el terminal 1 de la unidad, al último la pinza de alimentación en el positivo de la batería. Enciéndalo y apáguelo tres veces, cada una de menos de diez segundos, y escuche.',
      },
      coil: {
        title: 'Resistencia de la bobina, conector desconectado, a una temperatura conocida',
        good: '32 Ω ± 6 % a [68 °F|20 °C]',
        proves: 'devanado',
        how: 'Llave en OFF, conector desconectado, nada más en los terminales. Ohmios del terminal 1 al terminal 2 de la unidad. Reste la resistencia de las puntas. El cobre sube cerca de [0.2 % por °F|0.4 % por °C].',
      },
      sense: {
        title: 'Llave en ON, conector conectado, señal contra el negativo de la batería',
        good: 'unos 9 V',
        proves: 'pull-up del módulo de control, cable de señal, interruptor abierto',
        how: 'Aguja en la cavidad 3, punta roja en la aguja, negra en el negativo de la batería, voltios CD, llave en ON.',
      },
      pullUp: {
        title: 'Lo mismo en la mitad del arnés, conector desconectado',
        good: 'unos 9 V en el terminal 3 del arnés; el lector dice abierto, y cerrado con el terminal 3 unido al 2',
        proves: 'módulo de control, cable de señal y tierra, sin la unidad',
        how: 'Llave en OFF, desconecte el conector, llave en ON. Lea del terminal 3 del arnés al negativo de la batería. Después el cable de prueba del terminal 3 al terminal 2 del arnés, y mire el lector. Los códigos que esto pone son provocados por usted: léalos y bórrelos después.',
      },
      drops: {
        title:
          'Caída de voltaje del lado de tierra y del lado de alimentación, solenoide encendido por comando',
        good: 'tierra 0.10 V como máximo, alimentación 0.30 V como máximo',
        proves: 'cables y terminales bajo carga',
        how: 'Encienda el solenoide por comando del lector. Lado de tierra: roja en la cavidad 2, negra en el negativo de la batería. Lado de alimentación: roja en el positivo de la batería, negra en la cavidad 1. Una caída solo se ve mientras pasa corriente.',
      },
      drag: {
        title: 'Calibre de arrastre en cada terminal de la mitad del arnés',
        good: 'el terminal agarra',
        proves: 'terminales no abiertos de más',
        how: 'Llave en OFF, conector desconectado. Una punta desnuda del multímetro metida en un terminal lo abre: use la aguja de prueba de su medida.',
      },
      trip: {
        title: 'Puerto de aire con tapa, vacío en el puerto del cánister',
        good: 'la señal cae a unos 0 V bastante antes de [5 inHg|17 kPa], y ahí se queda',
        proves: 'el interruptor cierra',
        how: 'Conector conectado, aguja en la cavidad 3, punta roja en la aguja, negra en el negativo de la batería, llave en ON. Manguera del cánister fuera y con tapón, manguera de la bomba en el puerto del cánister, puerto de aire con tapa. Haga vacío y vigile el voltaje de señal.',
      },
      hold: {
        title: 'Retención a [15 inHg|51 kPa], con tapa, unidad sola',
        good: 'pierde [1 inHg|3 kPa] como máximo en 20 s',
        proves: 'nada en el lado del cánister tiene fuga',
        how: 'Como antes. Deténgase en [15 inHg|51 kPa] y espere 20 s sin tocar nada. A gran altitud es más difícil llegar a [15 inHg|51 kPa].',
      },
      reset: {
        title: 'Soltar el vacío',
        good: 'la señal vuelve a unos 9 V',
        proves: 'el interruptor regresa',
        how: 'Abra el alivio y vea regresar el voltaje de señal. Después lo mismo otra vez, dos veces.',
      },
      points: {
        title: 'Disparo y regreso en el manómetro de agua, despacio',
        good: 'disparo [10 ± 0.8 inH2O|25 ± 2 hPa], regreso [7.6 ± 0.8 inH2O|19 ± 2 hPa]',
        proves: 'los puntos propios del interruptor',
        how: 'Manguera del frasco en el puerto del cánister, manómetro y bomba en los dos ramales del frasco, puerto de aire con tapa. Solo cuartos de carrera. Lea la columna cuando cae el voltaje de señal. Después abra un poco el sangrado de aguja y léala otra vez cuando el voltaje regresa. Arriba de [30 inH2O|75 hPa] el agua se sale.',
      },
      engine: {
        title: 'Puerto de vacío del motor a [15 inHg|51 kPa], solenoide apagado y luego encendido',
        good: 'retiene de las dos maneras',
        proves: 'asiento de la válvula, lado de mando del diafragma',
        how: 'Manguera de la bomba en el puerto de vacío del motor. Haga [15 inHg|51 kPa] con el solenoide apagado y vigile la aguja. Después ponga 12 V con fusible en el solenoide: la aguja cae una vez, al llenarse la cámara. Haga vacío otra vez y vigílelo.',
      },
      vent: {
        title:
          'Lo mismo con el solenoide encendido y el puerto de aire abierto, después vacío en el puerto del cánister',
        good: 'el puerto del cánister retiene',
        proves: 'el asiento de ventilación cierra y sella',
        how: 'Vacío del motor en su puerto, solenoide encendido, puerto de aire abierto. Después la bomba en el puerto del cánister: lo que retiene ahora, lo retiene contra el puerto de aire abierto.',
      },
      stroke: {
        title:
          'Pulsos al solenoide, vacío del motor en su puerto, frasco de [1 qt|1 L] en el puerto del cánister',
        good: 'el frasco gana cerca de [0.5 inHg|1.7 kPa] de vacío por pulso y lo conserva entre pulsos',
        proves: 'diafragma, las dos válvulas de retención',
        how: 'Motor en marcha, su manguera en el puerto de vacío del motor. Manguera del frasco en el puerto del cánister, manguera de la bomba en un ramal por su vacuómetro. Quite el manómetro y ponga tapa en su ramal: su agua se iría en dos segundos. Dé pulsos al solenoide con el lector durante cinco segundos, después apáguelo, y vigile lo que conserva el frasco.',
      },
      smoke: {
        title: 'Humo a baja presión, gas inerte, manguera de aire con tapón',
        good: 'ningún humo afuera; la bolita de flujo baja',
        proves: 'mangueras, recipiente, cuerpo de la unidad',
        how: 'La ventilación está abierta en reposo, así que primero ponga el tapón a la manguera de aire. Nunca más de [14 inH2O|3.5 kPa]. Solo gas inerte: el aire del taller forma una mezcla que arde.',
      },
      road: {
        title: 'Prueba de carretera',
        good: 'el monitor corre y aprueba; ningún código pendiente después',
        proves: 'la reparación',
        how: 'Todo instalado otra vez, herramientas fuera del camión. Dos ciclos muestran una falla, tres aprobados apagan la luz. Lea los códigos pendientes después de manejar.',
      },
    },
  },
} satisfies Pick<Catalogue, 'serviceTests'>;
