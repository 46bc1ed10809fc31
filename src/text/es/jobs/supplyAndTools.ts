/** Jobs of the supply, each with a tool that hides what is wrong. */
export const supplyAndTools: Readonly<Record<string, string>> = {
  'Dead everywhere': 'Todo muerto',
  'Somebody has measured this circuit from one end to the other and found nothing in any place. Not all of it can be dead. Find out what is.':
    'Alguien midió este circuito de un extremo al otro y no halló nada en ningún lugar. No puede estar muerto todo. Averigüe qué lo está.',
  'Try your tools on something that you know before you use them on something that you do not.':
    'Probar sus herramientas en algo conocido antes de usarlas en lo desconocido.',
  'Believe a reading of nothing only when the same tool has just read something.':
    'Creer una lectura de nada solo cuando la misma herramienta acaba de leer algo.',
  'Halve a circuit, and halve it again, until one stretch is left.':
    'Partir un circuito a la mitad, y otra vez a la mitad, hasta que quede un solo tramo.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [99 800 miles|160 600 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [99 800 millas|160 600 km]',
  "Yellow lamp on. The district's own electrician came in to help, found no voltage in any place and wrote that the harness is dead. A new harness takes three weeks to come. Please say what it really needs.":
    'Luz amarilla encendida. El electricista del distrito vino a ayudar, no halló voltaje en ningún lugar y escribió que el arnés está muerto. Un arnés nuevo tarda tres semanas. Por favor diga qué necesita de verdad.',
  'Two weeks ago, tow bracket and rear step fitted by the body shop.':
    'Hace dos semanas, enganche y estribo trasero instalados por el taller de carrocería.',
  'Last week, lamp on. Fuse pulled by the driver, whole, put back.':
    'La semana pasada, luz encendida. Fusible sacado por el conductor, entero, vuelto a poner.',
  'Monday, measured by the electrician with what lies on this bench. Sheet says, "Sense 0 V, feed 0 V, fuse 0 V on both sides. Harness dead."':
    'Lunes, medido por el electricista con lo que hay en este banco. La hoja dice: "Señal 0 V, alimentación 0 V, fusible 0 V de los dos lados. Arnés muerto."',
  'Unit not touched, no hose taken off.': 'Unidad sin tocar, ninguna manguera quitada.',
  'Two things were wrong, and one of them lay in the hand. A lead of the meter is broken inside, and so the meter shows nothing wherever it is put, on the battery as well. That is why the known source comes first, and why it comes again after every reading of nothing. With whole leads the battery, the fuse and the sense circuit are as they should be. With the solenoid commanded on, the controller puts its voltage on its end of the feed wire and nothing of it arrives at cavity 1. The feed wire is open. It costs eighteen dollars, and it does not take three weeks to come.':
    'Dos cosas estaban mal, y una de ellas estaba en la mano. Una punta del multímetro está rota por dentro, y por eso el multímetro no muestra nada dondequiera que se ponga, tampoco en la batería. Por eso la fuente conocida va primero, y por eso va otra vez después de cada lectura de nada. Con puntas enteras, la batería, el fusible y el circuito de señal están como deben. Con el solenoide comandado encendido, el módulo de control pone su voltaje en su extremo del cable de alimentación y nada de él llega a la cavidad 1. El cable de alimentación está abierto. Cuesta dieciocho dólares, y no tarda tres semanas.',
  'Nothing on file': 'Nada guardado',
  'The lamp is out and no code is stored, but the inspection has put a note on the truck. Say whether there is anything to it, and prove what you say.':
    'La luz está apagada y no hay código guardado, pero la inspección le puso una nota al camión. Diga si hay algo de cierto, y pruebe lo que diga.',
  'Prove what you measure with before you write down what it says.':
    'Probar aquello con lo que mide antes de escribir lo que dice.',
  'Give nothing a clean sheet on a figure that nobody has checked.':
    'No dar nada por bueno con una cifra que nadie ha comprobado.',
  'Work from a note to a reading where no code leads the way.':
    'Ir de una nota a una lectura donde ningún código muestra el camino.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [136 400 miles|219 500 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [136 400 millas|219 500 km]',
  'No lamp. The inspection has written that the leak detection pump sounds lazy, and the district asks whether it has to be renewed. The driver has nothing to report.':
    'Ninguna luz. La inspección escribió que la bomba de detección de fugas suena floja, y el distrito pregunta si hay que renovarla. El conductor no tiene nada que informar.',
  'No part renewed in the last two years, no code in the last twelve months.':
    'Ninguna parte renovada en los últimos dos años, ningún código en los últimos doce meses.',
  'Inspection, Thursday. Unit commanded on three times, clicked three times. Sheet says, "Sounds lazy. Renew?"':
    'Inspección, jueves. Unidad comandada encendida tres veces, hizo clic tres veces. La hoja dice: "Suena floja. ¿Renovar?"',
  'Inspection, Thursday. Measured with what lies on this bench. Sheet says, "12.7 V, supply good. So it must be the unit."':
    'Inspección, jueves. Medido con lo que hay en este banco. La hoja dice: "12.7 V, suministro bueno. Entonces debe ser la unidad."',
  'Winter, truck kept under cover, driven twice a week.':
    'Invierno, camión bajo techo, manejado dos veces por semana.',
  'The battery is weak. It stands below 12 V with almost no load on it, where a full one has some 12.6 V. The meter of this bench hid that. Its own battery is low, it shows its sign in the window, and a meter in that state reads high. So it wrote 12.7 V on Thursday, and a good figure kept everybody from asking on. With a good battery in the meter the drops tell the rest. From battery to fuse, on the feed and on the ground next to nothing is lost, so nothing is wrong on the way. There is too little at the source. The unit clicked, drew the system down and held it. Nobody can measure lazy. What feeds the unit can be measured, and it is low. Read the sign in the window before the figure.':
    'La batería está débil. Está por debajo de 12 V casi sin carga, donde una llena tiene unos 12.6 V. El multímetro de este banco lo ocultó. Su propia batería está baja, muestra su símbolo en la pantalla, y un multímetro en ese estado lee de más. Por eso escribió 12.7 V el jueves, y una cifra buena hizo que nadie siguiera preguntando. Con una batería buena en el multímetro, las caídas dicen el resto. De la batería al fusible, en la alimentación y en la tierra casi nada se pierde, así que nada está mal en el camino. Hay muy poco en la fuente. La unidad hizo clic, hizo vacío en el sistema y lo retuvo. Nadie puede medir floja. Lo que alimenta la unidad sí se puede medir, y está bajo. Lea el símbolo de la pantalla antes que la cifra.',
  'Twice measured': 'Medido dos veces',
  'A large leak by its code, and not a wisp of smoke. Two shops have measured, and found every part good that they measured. Go on from there.':
    'Una fuga grande según su código, y ni una pizca de humo. Dos talleres midieron, y hallaron buena cada parte que midieron. Siga desde ahí.',
  'Measure a path under load from end to end, and then stretch by stretch.':
    'Medir un camino bajo carga de extremo a extremo, y luego tramo por tramo.',
  'Add up what is lost, instead of passing every stretch by itself.':
    'Sumar lo que se pierde, en lugar de aprobar cada tramo por separado.',
  'When one thing is found and mended, ask whether it was all.':
    'Cuando se halló y se reparó una cosa, preguntar si eso era todo.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [138 900 miles|223 550 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [138 900 millas|223 550 km]',
  'Lamp on since the first frost. Two shops have had the truck and found nothing. The district asks for a third opinion, and would like it to be the last one.':
    'Luz encendida desde la primera helada. Dos talleres tuvieron el camión y no hallaron nada. El distrito pide una tercera opinión, y quisiera que fuera la última.',
  'First shop, smoke test of the whole system. No smoke seen. Unit drawn by hand pump, holds.':
    'Primer taller, prueba de humo de todo el sistema. No se vio humo. Unidad probada con bomba manual, retiene.',
  'Second shop, all three wires measured from end to end for an open. None found.':
    'Segundo taller, los tres cables medidos de extremo a extremo en busca de una interrupción. No se halló ninguna.',
  'Second shop, current to the solenoid measured with the meter of this bench. Sheet says, "0 mA. Controller does not drive."':
    'Segundo taller, corriente al solenoide medida con el multímetro de este banco. La hoja dice: "0 mA. El módulo de control no alimenta."',
  'Controller quoted, 720 dollars. Not ordered.': 'Módulo de control cotizado, 720 dólares. No pedido.',
  'Two resistances lie one behind the other, and neither would have been enough alone. The contacts of the key switch are burnt and cost some 20 ohms, and the feed wire costs some 25 more. Together they are more than the coil has. What is left at cavity 1 does not pull the plunger in, the system is never drawn down, and the controller calls that a large leak. Neither place is open, so a search for an open finds nothing. Under load the whole feed loses more than half of its voltage, and stretch by stretch it is lost in two places. Whoever mends one of them hears a click and sees the monitor pass, and sends the other one home to get worse. The 0 mA said nothing of the controller. The fuse of the milliamps jack has melted, and the meter would have shown that on any circuit.':
    'Dos resistencias están una detrás de otra, y ninguna habría bastado sola. Los contactos del interruptor de llave están quemados y cuestan unos 20 ohmios, y el cable de alimentación cuesta unos 25 más. Juntas son más de lo que tiene la bobina. Lo que queda en la cavidad 1 no mete el émbolo, el sistema nunca hace vacío, y el módulo de control lo llama fuga grande. Ninguno de los dos lugares está abierto, así que una búsqueda de interrupciones no halla nada. Bajo carga, toda la alimentación pierde más de la mitad de su voltaje, y tramo por tramo se pierde en dos lugares. Quien repara uno de ellos oye un clic y ve pasar el monitor, y manda el otro a casa a empeorar. Los 0 mA no decían nada del módulo de control. El fusible de la entrada de miliamperios se fundió, y el multímetro habría mostrado eso en cualquier circuito.',
};
