/** Jobs whose fault is in a circuit. */
export const circuits: Readonly<Record<string, string>> = {
  'Nine volts and still a code': 'Nueve voltios y aún un código',
  'The sense circuit was measured last week, and the figures are right. The code came back all the same. Find out what the meter was not asked.':
    'El circuito de señal se midió la semana pasada, y las cifras están bien. El código volvió de todos modos. Averigüe qué no se le preguntó al multímetro.',
  'Measure a circuit while it does its work, not only while it rests.':
    'Medir un circuito mientras trabaja, no solo mientras reposa.',
  'Prefer a reading under load to ohms and to a lamp.':
    'Preferir una lectura bajo carga a los ohmios y a una lámpara.',
  "Name both ends of every reading, and know what a change of the black lead's place hides.":
    'Nombrar los dos extremos de cada lectura, y saber qué oculta un cambio de lugar de la punta negra.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [96 600 miles|155 450 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [96 600 millas|155 450 km]',
  'Yellow lamp on again, two weeks after the last visit. The fleet office has a quote for a controller on the desk, 720 dollars, and wants a second opinion before it pays.':
    'Luz amarilla encendida otra vez, dos semanas después de la última visita. La oficina de la flota tiene en el escritorio una cotización de un módulo de control, 720 dólares, y quiere una segunda opinión antes de pagar.',
  'Autumn, left front wing and its brackets renewed after a slide on ice.':
    'Otoño, salpicadera delantera izquierda y sus soportes renovados después de un patinazo en hielo.',
  'First visit, leak detection pump renewed on suspicion. The lamp came back after some [150 miles|240 km].':
    'Primera visita, bomba de detección de fugas renovada por sospecha. La luz volvió después de unas [150 millas|240 km].',
  'Second visit, sense measured at the plug, key on. 9 V at rest, next to nothing under vacuum, 9 V on release. Note in the margin, "Circuit good, must be the controller."':
    'Segunda visita, señal medida en el conector, llave en ON. 9 V en reposo, casi nada con vacío, 9 V al soltarlo. Nota al margen: "Circuito bueno, debe ser el módulo de control."',
  'Hoses and cap looked at, nothing found.': 'Mangueras y tapón revisados a la vista, no se halló nada.',
  'There are some ten ohms too many in the ground of the unit. Sense and solenoid share that ground. With the solenoid off the sense circuit carries four thousandths of an ampere, the ten ohms cost a few hundredths of a volt, and every reading looks right. With it on, a third of an ampere comes down the same wire and lifts the closed switch to some 3 V, which is neither open nor closed to the controller. It reads the sense at the end of every pulse, so it knew. A black lead on cavity 2 instead of battery negative would have hidden it once more. One reading of the ground side under load decides it. The limit is a tenth of a volt, and this wire drops volts.':
    'Hay unos diez ohmios de más en la tierra de la unidad. La señal y el solenoide comparten esa tierra. Con el solenoide apagado, el circuito de señal lleva cuatro milésimas de amperio, los diez ohmios cuestan unas centésimas de voltio, y toda lectura parece bien. Con él encendido, baja un tercio de amperio por el mismo cable y sube el interruptor cerrado a unos 3 V, que para el módulo de control no es ni abierto ni cerrado. Él lee la señal al final de cada pulso, así que lo sabía. Una punta negra en la cavidad 2 en lugar del negativo de la batería lo habría ocultado otra vez. Una sola lectura del lado de tierra bajo carga lo decide. El límite es una décima de voltio, y en este cable caen voltios.',
  'Ready by Friday': 'Listo para el viernes',
  'The controller says that the system never draws down. The last shop renewed the pump and the code came back. The district wants to know what to order this time.':
    'El módulo de control dice que el sistema nunca llega a hacer vacío. El último taller renovó la bomba y el código volvió. El distrito quiere saber qué pedir esta vez.',
  'Test what the controller needs to see, from one end of it to the other.':
    'Probar lo que el módulo de control necesita ver, de un extremo al otro.',
  'Judge the unit by itself, with the plug parted, before you judge its wiring.':
    'Juzgar la unidad sola, con el conector desconectado, antes de juzgar su cableado.',
  'Order only what a reading convicts.': 'Pedir solo lo que una lectura señala.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [126 050 miles|202 850 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [126 050 millas|202 850 km]',
  'Yellow lamp on again. It has to be on the road by Friday for the hydrant inspection. The driver smells no fuel. The fleet office asks whether it should order a second leak detection pump.':
    'Luz amarilla encendida otra vez. Tiene que estar en la carretera el viernes para la inspección de hidrantes. El conductor no huele combustible. La oficina de la flota pregunta si debe pedir una segunda bomba de detección de fugas.',
  'Last winter, radiator support and front wiring cover repaired after a gatepost was hit.':
    'Invierno pasado, soporte del radiador y cubierta del cableado delantero reparados después de golpear un poste de portón.',
  'May, leak detection pump renewed by another shop, untested. The lamp came back after some [190 miles|310 km].':
    'Mayo, bomba de detección de fugas renovada por otro taller, sin probar. La luz volvió después de unas [190 millas|310 km].',
  'June, canister hose renewed. The lamp came back after some [230 miles|370 km].':
    'Junio, manguera del cánister renovada. La luz volvió después de unas [230 millas|370 km].',
  'Filler cap and air filter looked at, both good.':
    'Tapón de llenado y filtro de aire revisados a la vista, los dos buenos.',
  'Nothing was measured, as far as the papers show.': 'No se midió nada, hasta donde muestran los papeles.',
  "The unit is good, and so was the one before it. The sense wire is broken between the controller and the plug. With the key on the controller's end of the wire stands at some 9 V and cavity 3 at nothing. Through the parted plug the switch opens and closes as it should. To the controller a switch that never closes and a wire that never arrives are the same thing, a system that cannot be drawn down. One reading at each end of the wire tells them apart, for eighteen dollars.":
    'La unidad es buena, y también lo era la anterior. El cable de señal está roto entre el módulo de control y el conector. Con la llave en ON, el extremo del cable en el módulo de control está a unos 9 V y la cavidad 3 a nada. Por el conector desconectado, el interruptor abre y cierra como debe. Para el módulo de control, un interruptor que nunca cierra y un cable que nunca llega son lo mismo: un sistema en el que no se puede hacer vacío. Una lectura en cada extremo del cable los distingue, por dieciocho dólares.',
  'Silent on command': 'Callada al comando',
  'The controller calls the pump and hears nothing back. A new unit has been quoted for already. Follow the current from the battery to the plug before anyone signs.':
    'El módulo de control llama a la bomba y no oye respuesta. Ya se cotizó una unidad nueva. Siga la corriente de la batería al conector antes de que alguien firme.',
  'Follow a feed from its source to the plug, one point after the other, with the load on.':
    'Seguir una alimentación de su fuente al conector, un punto tras otro, con la carga puesta.',
  'Listen to the unit by itself, through the parted plug, before you judge what feeds it.':
    'Escuchar la unidad sola, por el conector desconectado, antes de juzgar lo que la alimenta.',
  'Look for what could have caused the damage before you put in a new part.':
    'Buscar qué pudo causar el daño antes de poner una parte nueva.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [71 300 miles|114 750 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [71 300 millas|114 750 km]',
  "Yellow lamp on since the truck came back from the sign fitter's. Runs well, starts well. The district wants it for the night crew at Sill Lane, and asks whether the quote for a leak detection pump is right.":
    'Luz amarilla encendida desde que el camión volvió del taller de rótulos. Marcha bien, arranca bien. El distrito lo quiere para la cuadrilla nocturna en Sill Lane, y pregunta si la cotización de una bomba de detección de fugas está bien.',
  'Spring, timing belt, water pump and all fluids. No complaint afterwards.':
    'Primavera, banda de tiempo, bomba de agua y todos los líquidos. Ninguna queja después.',
  'Last week, beacon bar and cab radio fitted by the sign fitter. The dash had been out for it.':
    'La semana pasada, barra de torretas y radio de cabina instalados en el taller de rótulos. Para eso se sacó el tablero.',
  'Quick-lube shop read the code and quoted one leak detection pump, fitted, without a test.':
    'Un taller de lubricación rápida leyó el código y cotizó una bomba de detección de fugas, instalada, sin probar.',
  'Night crew reports that everything in the cab works, radio and beacons too.':
    'La cuadrilla nocturna informa que todo en la cabina funciona, también el radio y las torretas.',
  "The fuse of the solenoid's feed has melted. There is battery voltage before it and none behind it, and everything after it is sound. The unit clicks from the jumper, coil and wire are not shorted, and the ground side drops next to nothing once current flows. The controller has a supply of its own, so it stayed awake and could complain. To it a melted fuse, a dead driver and a wire lying on the body look the same. Two readings, one on each side of the fuse, tell them apart for two dollars. And a fuse does not melt for nothing. Whoever measured the feed to ground before fitting the new one knows that it will stay whole.":
    'El fusible de la alimentación del solenoide se fundió. Antes de él hay voltaje de batería y detrás ninguno, y todo lo que sigue está sano. La unidad hace clic con el puente, la bobina y el cable no están en corto, y en el lado de tierra casi nada cae una vez que pasa corriente. El módulo de control tiene su propia alimentación, así que siguió despierto y pudo quejarse. Para él, un fusible fundido, una salida de alimentación muerta y un cable contra la carrocería se ven igual. Dos lecturas, una de cada lado del fusible, los distinguen por dos dólares. Y un fusible no se funde por nada. Quien midió la alimentación contra tierra antes de poner el nuevo sabe que seguirá entero.',
};
