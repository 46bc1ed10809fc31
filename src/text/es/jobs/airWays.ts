/** Jobs of a way for air that is shut, or that is not: filter, air hose, canister hose. */
export const airWays: Readonly<Record<string, string>> = {
  'Two weeks at the reservoir': 'Dos semanas en el embalse',
  'The controller says that its pump does not let go. The stores would send the pump back under warranty. Ask first what else has to work before it can let go.':
    'El módulo de control dice que su bomba no suelta. El almacén la mandaría de regreso con la garantía. Pregunte primero qué más tiene que funcionar para que pueda soltar.',
  'Read in the service data what a code means before you think of a part.':
    'Leer en los datos de servicio qué significa un código antes de pensar en una parte.',
  'Look at the whole path that a system breathes through.':
    'Revisar todo el camino por el que respira un sistema.',
  'Clear what is dear by a reading before you name what is cheap.':
    'Descartar lo caro con una lectura antes de nombrar lo barato.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [74 200 miles|119 400 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [74 200 millas|119 400 km]',
  'Yellow lamp on since the truck came back from two weeks of grading the tracks round the reservoir. It starts and runs well. The stores have the warranty form for the leak detection pump on the desk and ask for one line that says it sticks.':
    'Luz amarilla encendida desde que el camión volvió de dos semanas de emparejar los caminos alrededor del embalse. Arranca y marcha bien. El almacén tiene en el escritorio el formato de garantía de la bomba de detección de fugas y pide una línea que diga que se pega.',
  'Last year, leak detection pump renewed after a P0455. No lamp since, for some [8200 miles|13 200 km].':
    'El año pasado, bomba de detección de fugas renovada por un P0455. Desde entonces ninguna luz, en unas [8200 millas|13 200 km].',
  'Spring, yearly service. Oil, belts and brakes. The vapour side is not on the sheet.':
    'Primavera, servicio anual. Aceite, bandas y frenos. El lado de vapor no está en la hoja.',
  'Monday, code read by the yard. Filler cap and hoses looked at from above, nothing found.':
    'Lunes, código leído por el patio. Tapón de llenado y mangueras revisados a la vista desde arriba, no se halló nada.',
  'Nothing has been taken off and nothing has been measured.':
    'No se ha quitado nada y no se ha medido nada.',
  'The filter on the air hose is clogged with the dust of the tracks. The unit lets go as it should, but the air that has to come back comes through that filter, and it comes too slowly. To the controller a vent that sticks and a way that is shut look the same, since all it sees is a switch that does not open in time. The unit drew the whole system down and held it. One stroke of a proven hand pump on the air hose pulled the needle up, where it should have stayed at zero. A look at the filter then told it from the hose before it. That is a part for sixteen dollars, and it belongs on the sheet of every yearly service.':
    'El filtro de la manguera de aire está tapado con el polvo de los caminos. La unidad suelta como debe, pero el aire que tiene que volver pasa por ese filtro, y pasa demasiado despacio. Para el módulo de control, un respiradero que se pega y un paso cerrado se ven igual, pues lo único que ve es un interruptor que no abre a tiempo. La unidad hizo vacío en todo el sistema y lo retuvo. Una carrera de una bomba manual probada en la manguera de aire subió la aguja, que debía quedarse en cero. Una mirada al filtro lo distinguió después de la manguera que lo precede. Es una parte de dieciséis dólares, y va en la hoja de cada servicio anual.',
  'Sill Lane again': 'Otra vez Sill Lane',
  'A small leak, and a yard that has bought caps for it twice. Find the place by your own readings, and buy one part.':
    'Una fuga pequeña, y un patio que ya compró tapones dos veces por ella. Encuentre el lugar con sus propias lecturas, y compre una sola parte.',
  'Ask whether the unit leaks before you look for a leak behind it.':
    'Preguntar si la unidad tiene fuga antes de buscar una fuga detrás de ella.',
  'Give smoke the time that it needs, at a pressure that the system bears.':
    'Darle al humo el tiempo que necesita, a una presión que el sistema aguanta.',
  'Name a place only when you have seen it leak.': 'Nombrar un lugar solo cuando ha visto que tiene fuga.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [84 300 miles|135 650 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [84 300 millas|135 650 km]',
  'Yellow lamp on since the second week of the night round in Sill Lane. Nothing to smell, nothing to hear, and it runs well. The stores hold two filler caps that nobody wants to throw away.':
    'Luz amarilla encendida desde la segunda semana de la ronda nocturna en Sill Lane. Nada que oler, nada que oír, y marcha bien. El almacén guarda dos tapones de llenado que nadie quiere tirar.',
  'June, filler cap renewed. The lamp came back after some [150 miles|240 km].':
    'Junio, tapón de llenado renovado. La luz volvió después de unas [150 millas|240 km].',
  'July, filler cap renewed once more, from another supplier. The lamp came back after some [170 miles|270 km].':
    'Julio, tapón de llenado renovado otra vez, de otro proveedor. La luz volvió después de unas [170 millas|270 km].',
  'August, code read and cleared. It was back within the week.':
    'Agosto, código leído y borrado. Volvió en la misma semana.',
  'Nobody has had the truck on the lift.': 'Nadie ha subido el camión al elevador.',
  'The canister hose is split, by some [34 thousandths of an inch|0.87 mm]. Unit, canister, tank and cap are tight. The unit could draw the system down, and then it could not hold it, which is what a leak does wherever it sits. Smoke with the air hose plugged goes into everything at once and comes out at one place. What was at fault in June was the order of work. A cap is cheap and near at hand, and so it was bought twice without a reading. The hose costs less than both of them did.':
    'La manguera del cánister está rajada, unas [34 milésimas de pulgada|0.87 mm]. Unidad, cánister, tanque y tapón están herméticos. La unidad pudo hacer vacío en el sistema y después no lo pudo retener, que es lo que hace una fuga dondequiera que esté. El humo, con la manguera de aire tapada, entra en todo a la vez y sale por un solo lugar. Lo que estuvo mal en junio fue el orden del trabajo. Un tapón es barato y está a la mano, y por eso se compró dos veces sin una lectura. La manguera cuesta menos que los dos juntos.',
  'Not a click': 'Ni un clic',
  'A leak detection pump was condemned because nobody could hear it. The code on file speaks of something else. Listen for yourself, then follow the code.':
    'Se condenó una bomba de detección de fugas porque nadie la pudo oír. El código guardado habla de otra cosa. Escuche usted mismo, y luego siga el código.',
  'Try every tool before its silence counts against a part.':
    'Probar cada herramienta antes de que su silencio cuente en contra de una parte.',
  'Ask for the same sign in a second way when the first one fails.':
    'Pedir la misma señal de otra manera cuando la primera falla.',
  'Follow what the code says, not what the last sheet says.':
    'Seguir lo que dice el código, no lo que dice la última hoja.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [101 700 miles|163 650 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [101 700 millas|163 650 km]',
  'Yellow lamp on since Thursday. The other bay has found the leak detection pump dead and wants to renew it today. The fleet office would like a second pair of ears before it spends 385 dollars.':
    'Luz amarilla encendida desde el jueves. La otra bahía halló muerta la bomba de detección de fugas y quiere renovarla hoy. La oficina de la flota quiere un segundo par de oídos antes de gastar 385 dólares.',
  'Wednesday, underside of the truck sealed against the winter by a contractor.':
    'Miércoles, parte de abajo del camión sellada contra el invierno por un contratista.',
  'Thursday, lamp on after some [70 miles|110 km].':
    'Jueves, luz encendida después de unas [70 millas|110 km].',
  'Friday, other bay, unit put on the jumper of this bench. Sheet says, "Not a click. Unit dead."':
    'Viernes, otra bahía, unidad puesta en el puente de este banco. La hoja dice: "Ni un clic. Unidad muerta."',
  'Friday, filter on the air hose looked at, clean.':
    'Viernes, filtro de la manguera de aire revisado a la vista, limpio.',
  "The fuse in this bench's jumper has melted, and so the unit was never fed on Friday. Asked through the reader it clicks every time. The silence of a tool is no proof until that tool has spoken. What the code says is that the switch did not open in time after venting, and the air for that comes in through filter and air hose. The unit drew the system down and held it. The hand pump on the air hose found the way almost shut, and the filter was clean, so the hose itself is blocked. A look into its end shows it. It costs 22 dollars, and the unit stays where it is.":
    'El fusible del puente de este banco se fundió, y por eso el viernes la unidad nunca recibió alimentación. Comandada con el lector, hace clic cada vez. El silencio de una herramienta no prueba nada mientras esa herramienta no haya hablado. Lo que dice el código es que el interruptor no abrió a tiempo al ventear, y el aire para eso entra por el filtro y la manguera de aire. La unidad hizo vacío en el sistema y lo retuvo. La bomba manual en la manguera de aire halló el paso casi cerrado, y el filtro estaba limpio, así que la bloqueada es la manguera misma. Una mirada en su extremo lo muestra. Cuesta 22 dólares, y la unidad se queda donde está.',
};
