import type { Catalogue } from '../translate.ts';

/** Method rules and safety breaches: a title, and one line of why. */
export const rules = {
  rules: {
    'meter-proven': {
      title: 'Multímetro probado en una fuente conocida',
      why: 'Una punta rota lee cero, y el cero parece un hallazgo.',
    },
    'meter-proven-again': {
      title: 'Multímetro probado una vez más después de una sorpresa',
      why: 'Una punta que se rompe a medio trabajo le da nada donde usted esperaba nada.',
    },
    'leads-noted': {
      title: 'Resistencia de las propias puntas anotada antes de ohmios bajos',
      why: 'Dos puntas son dos décimas de ohmio. En una lectura baja, esa es la lectura.',
    },
    'pump-proven': {
      title: 'Bomba de vacío manual y vacuómetro probados con la manguera cerrada',
      why: 'Una bomba con fuga, o una aguja que se pega, hace ver mala toda parte buena.',
    },
    'codes-recorded-first': {
      title: 'Códigos y datos congelados leídos antes de borrar nada',
      why: 'Lo borrado se pierde, y con ello cuándo y cómo falló.',
    },
    'own-codes-cleared': {
      title: 'Códigos provocados por usted leídos y borrados',
      why: 'Un conector desconectado con la llave en ON pone códigos. Si se quedan, mandan a buscar al siguiente.',
    },
    'cheap-checked-first': {
      title: 'Lo barato y probable revisado primero',
      why: 'Mirar cuesta un minuto. Si se salta el fusible o el tapón, puede acabar pagando un módulo de control.',
    },
    'key-off-for-plug': {
      title: 'Llave en OFF antes de desconectar o conectar el conector',
      why: 'Los terminales abiertos con corriente hacen arco, y el módulo de control almacena un código provocado por usted.',
    },
    'supply-and-ground-loaded': {
      title: 'Alimentación y tierra probadas bajo carga',
      why: 'Un cable sostenido por un solo hilo muestra todo el voltaje hasta que pasa corriente.',
    },
    'ohms-on-dead-circuit': {
      title: 'Ohmios solo en un circuito sin energía y aislado',
      why: 'Un circuito con energía o unido a otros suma sus propios voltajes y caminos a la cifra.',
    },
    'back-probed-with-pins': {
      title: 'Sondeo por detrás con agujas',
      why: 'Una punta metida en un terminal lo abre, y esa es una falla nueva.',
    },
    'pins-removed': {
      title: 'Agujas fuera y sellos asentados otra vez',
      why: 'Un sello abierto deja entrar agua; la falla regresa en un mes.',
    },
    'jumper-short-and-fused': {
      title: 'Puente con fusible e interruptor, conector desconectado, diez segundos como máximo',
      why: 'El fusible cuida el cableado, el interruptor aleja la chispa, el poco tiempo mantiene fría la bobina.',
    },
    'air-port-capped': {
      title: 'Puerto de aire con tapa para la prueba de vacío',
      why: 'En reposo el asiento de ventilación está abierto: sin la tapa, la bomba toma aire del taller.',
    },
    'canister-hose-plugged': {
      title: 'Manguera del cánister abierta, con tapón',
      why: 'El vapor no debe quedar abierto junto a una chispa, y la suciedad debe quedar fuera.',
    },
    'clamps-hand-tight': {
      title: 'Abrazaderas apretadas a mano',
      why: 'Una abrazadera floja deja fuga; una demasiado apretada raja la espiga.',
    },
    'click-three-times': {
      title: 'Clic intentado al menos tres veces',
      why: 'Un solo clic puede ser el afortunado de un émbolo que se pega. Lo que va y viene pide más.',
    },
    'vacuum-three-times': {
      title: 'Prueba de vacío hecha al menos tres veces',
      why: 'Un interruptor que trabaja una vez puede no trabajar la siguiente. Lo que va y viene pide más.',
    },
    'return-observed': {
      title: 'Vacío soltado y regreso vigilado',
      why: 'Un interruptor que cierra pero no vuelve a abrir pasa media prueba.',
    },
    'hold-watched': {
      title: 'Vacío quieto y vigilado, veinte segundos o hasta que se perdió',
      why: 'Una fuga pequeña necesita tiempo para verse en el vacuómetro. Vigilado aún no es aprobado.',
    },
    'new-unit-tested': {
      title: 'Unidad nueva probada en el banco antes de instalar una',
      why: 'Nueva no es lo mismo que buena, y recién salida de la caja se prueba pronto.',
    },
    'root-looked-for': {
      title: 'Búsqueda de lo que echa a perder una unidad',
      why: 'Combustible o carbón en la manguera, agua o suciedad en el filtro: lo que mató a esta unidad mata a la siguiente.',
    },
    'bench-restored': {
      title: 'Mangueras, tapas y conector de regreso en su lugar',
      why: 'Una manguera fuera de su lugar es la próxima queja del cliente.',
    },
    'lock-checked': {
      title: 'Seguro del conector revisado',
      why: 'Un conector metido hasta el fondo pero sin su seguro trabaja hasta el primer bache.',
    },
    'pending-codes-read': {
      title: 'Códigos pendientes leídos después de manejar',
      why: 'Una falla en un solo ciclo no enciende ninguna luz. Solo queda ahí como pendiente.',
    },
  },
  safety: {
    'unfused-source':
      'Se puso voltaje de batería en el circuito sin fusible. Un corto ahí quema el cableado.',
    'supply-on-sense-mated':
      'Se pusieron 12 V en el cable de señal con el conector conectado. Ese cable termina dentro del módulo de control.',
    'lamp-on-sense-mated':
      'Se puso una lámpara de prueba en el cable de señal con el conector conectado. Baja el voltaje del circuito y carga al módulo de control.',
    'slipped-probe':
      'Una punta quedó sobre dos cavidades del conector conectado. Eso pone en corto dos circuitos del módulo de control.',
    'too-much-pressure-on-canister':
      'Se soplaron más de [14 inH2O|3.5 kPa] en el lado del cánister del camión. El tanque y el cánister no están hechos para eso.',
    'smoke-with-shop-air':
      'Se sopló humo con aire del taller. El aire y el vapor de combustible forman una mezcla que arde; use solo gas inerte.',
    'too-much-vacuum-on-canister':
      'Se hicieron más de [14 inH2O|3.5 kPa] de vacío en el lado del cánister del camión. El tanque y el cánister no están hechos para eso.',
    'over-rated-vacuum': 'Se hizo en la unidad más vacío que sus [22 inHg|74 kPa] nominales.',
    'spark-at-open-vapour':
      'Se conectó o desconectó un puente junto a una línea de vapor abierta. Primero ponga tapones a las mangueras y ventile la unidad.',
    'spark-at-unaired-unit':
      'Se hizo o se cortó contacto con una punta en una unidad que no se había ventilado. Quítela de su manguera de vapor, deje que se ventile, y use el interruptor del lado de la batería.',
  },
  grades: { minor: 'leve', serious: 'grave' },
} satisfies Pick<Catalogue, 'rules' | 'safety' | 'grades'>;
