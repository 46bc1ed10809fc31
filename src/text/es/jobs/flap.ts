/** Jobs at the flap actuator. */
export const flap: Readonly<Record<string, string>> = {
  'Engine running, keep hands, sleeves and leads away from belts, fan and everything hot.':
    'Con el motor en marcha, mantenga manos, mangas y cables lejos de bandas, ventilador y todo lo caliente.',
  'Sparks only away from fuel lines. Make the jumper at the unit first. Switch it at the battery end.':
    'Chispas solo lejos de líneas de combustible. Conecte el puente primero en la unidad. Enciéndalo del lado de la batería.',
  'Never more than [22 inHg|74 kPa] on this unit.': 'Nunca más de [22 inHg|74 kPa] en esta unidad.',
  'Slow off the line': 'Lenta para arrancar',
  'Another unit, the same three wires. The controller asks a flap in the intake to close and waits for an answer that never comes. Find out what keeps the flap where it is.':
    'Otra unidad, los mismos tres cables. El módulo de control le pide a una aleta de la admisión que cierre y espera una respuesta que nunca llega. Averigüe qué deja a la aleta donde está.',
  'Meet a unit you do not know by its plug, its ports and its service data.':
    'Conocer una unidad nueva por su conector, sus puertos y sus datos de servicio.',
  'Ask in turn what a part needs to move. Command, ground, and whatever it is moved by.':
    'Preguntar por turno qué necesita una pieza para moverse. Mando, tierra, y lo que la mueve.',
  'Measure a supply of vacuum while it stands and while it flows.':
    'Medir un suministro de vacío quieto y con flujo.',
  'Truck 9, petrol stake truck, Harrow Point Water District (invented), [61 300 miles|98 650 km]':
    'Camión 9, camión de redilas a gasolina, Harrow Point Water District (inventado), [61 300 millas|98 650 km]',
  'Yellow lamp on since last week. It pulls away lazily from the yard gate, says the driver, and is fine once it is rolling.':
    'Luz amarilla encendida desde la semana pasada. Sale con pereza del portón del patio, dice el conductor, y ya rodando va bien.',
  'Last week, battery tray and its bracket renewed by the night shift.':
    'La semana pasada, charola de la batería y su soporte renovados por el turno de noche.',
  'Lamp on the day after.': 'Luz encendida al día siguiente.',
  'Fuses looked at by the driver, all whole.': 'Fusibles revisados por el conductor, todos enteros.',
  'The vacuum hose between reservoir and actuator lies under the new bracket and is pinched. With a gauge on its end and nothing flowing it shows all the vacuum that the engine has. Let air in through the release, and the needle falls away. So the flap gets its vacuum too slowly for the controller, which says what it saw, a flap that did not come. Command, coil and click were good, the can held what the hand pump drew, and the switch closed when it was drawn. The hose costs fourteen dollars. The actuator would have cost a day.':
    'La manguera de vacío entre el depósito y el actuador quedó bajo el soporte nuevo y está aplastada. Con un vacuómetro en su extremo y sin flujo muestra todo el vacío que tiene el motor. Deje entrar aire por la válvula de alivio, y la aguja se cae. Así la aleta recibe su vacío demasiado despacio para el módulo de control, que dice lo que vio, una aleta que no llegó. Mando, bobina y clic estaban bien, la cámara sostuvo lo que sacó la bomba manual, y el interruptor cerró al accionarla. La manguera cuesta catorce dólares. El actuador habría costado un día.',
  'New part, old code': 'Pieza nueva, código viejo',
  'The flap actuator is new, and the code is the old one. It says that the flap was drawn before anybody asked. Find out who told the controller so.':
    'El actuador de la aleta es nuevo, y el código es el de antes. Dice que la aleta ya estaba accionada antes de que nadie lo pidiera. Averigüe quién se lo dijo al módulo de control.',
  'Read what a code claims, and ask by which wire the controller came to know it.':
    'Leer lo que afirma un código, y preguntar por qué cable lo supo el módulo de control.',
  'Part a circuit in two and see on which side the wrong reading stays.':
    'Partir un circuito en dos y ver de qué lado se queda la lectura mala.',
  'Clear a new part by what it does, and not by its age.':
    'Descartar una pieza nueva por lo que hace, y no por su edad.',
  'Truck 9, petrol stake truck, Harrow Point Water District (invented), [61 900 miles|99 600 km]':
    'Camión 9, camión de redilas a gasolina, Harrow Point Water District (inventado), [61 900 millas|99 600 km]',
  'Lamp on again, two days after the flap actuator was renewed for it. The office asks whether the new one is bad too, and who pays for it if it is.':
    'Luz encendida otra vez, dos días después de renovar por ella el actuador de la aleta. La oficina pregunta si el nuevo también está malo, y quién lo paga si lo está.',
  'Last week, code found, flap seen to move by hand. Actuator renewed.':
    'La semana pasada, código encontrado, se vio que la aleta se mueve a mano. Actuador renovado.',
  'Code cleared. Lamp back after some [90 miles|145 km].':
    'Código borrado. La luz volvió después de unas [90 millas|145 km].',
  'Plug looked at from outside, clean and locked.': 'Conector revisado por fuera, limpio y con seguro.',
  "The sense wire has chafed through on the way to the controller and lies on metal. So its voltage is down whether the switch is open or closed, and the controller takes that for a flap that is always drawn. With the plug parted the sense stayed down, so it was not the actuator, old or new. The wire's own harness half had a path to ground that no open circuit has. A wire is a handful of minutes and a few dollars. Parting the plug and looking once more at the same voltage would have saved the first actuator.":
    'El cable de señal se peló en el camino al módulo de control y toca metal. Así su voltaje está abajo con el interruptor abierto o cerrado, y el módulo de control lo toma por una aleta siempre accionada. Con el conector desconectado la señal siguió abajo, así que no era el actuador, ni el viejo ni el nuevo. La mitad del arnés de ese cable tenía un camino a tierra que ningún circuito abierto tiene. Un cable son unos minutos y unos dólares. Desconectar y mirar otra vez el mismo voltaje habría salvado al primer actuador.',
  'The second opinion': 'La segunda opinión',
  'One bay has found the flap actuator bad, the other bay says that everything on that bench leaks. Both have written down what they read. Find out who is right, and prove it.':
    'Una bahía halló malo el actuador de la aleta, la otra dice que en ese banco todo tiene fuga. Las dos apuntaron lo que leyeron. Averigüe quién tiene razón, y demuéstrelo.',
  'Try a tool at its own closed end before its reading counts against a part.':
    'Probar una herramienta en su propio extremo cerrado antes de que su lectura cuente contra una pieza.',
  'Tell what does not move for want of a command from what is commanded and does not hold.':
    'Distinguir lo que no se mueve por falta de mando de lo que recibe el mando y no sostiene.',
  'Hold a unit against a known good one, or against its own limits, by one test.':
    'Comparar una unidad con una buena conocida, o con sus propios límites, por una sola prueba.',
  'Truck 9, petrol stake truck, Harrow Point Water District (invented), [63 100 miles|101 550 km]':
    'Camión 9, camión de redilas a gasolina, Harrow Point Water District (inventado), [63 100 millas|101 550 km]',
  'Yellow lamp on, and a code that has been on file for a month. Two bays have looked at it and do not agree. The district wants one answer.':
    'Luz amarilla encendida, y un código guardado desde hace un mes. Dos bahías lo revisaron y no están de acuerdo. El distrito quiere una sola respuesta.',
  'First bay, pump on the air port of the unit. Sheet says, "Goes up to [5 inHg|17 kPa] and no further, falls at once. Actuator bad."':
    'Primera bahía, bomba en el puerto de aire de la unidad. La hoja dice: "Sube a [5 inHg|17 kPa] y no pasa de ahí, cae enseguida. Actuador malo."',
  'Second bay, same pump, plugged. Sheet says, "Pump falls too, by itself. So nothing is proven."':
    'Segunda bahía, la misma bomba, tapada. La hoja dice: "La bomba también cae, sola. Así que no hay nada demostrado."',
  'Since then nobody has touched it.': 'Desde entonces nadie lo ha tocado.',
  'Both bays were right about the pump of this bench and wrong about the unit. Its seal leaks, so what it showed on the air port was its own. A pump that falls on its own closed hose is renewed, and then asked again, and with a tight pump the can held and the switch closed. What the unit lacked was current. Its feed wire has far too many ohms in it, which no meter shows while nothing flows. Commanded on, several volts stayed in that wire and the plunger never moved. A loaded reading at both ends of the wire says so in two minutes.':
    'Las dos bahías tenían razón sobre la bomba de este banco y se equivocaron sobre la unidad. Su sello tiene fuga, así que lo que mostró en el puerto de aire era suyo. Una bomba que cae en su propia manguera cerrada se renueva, y luego se le pregunta otra vez, y con una bomba hermética la cámara sostuvo y el interruptor cerró. Lo que le faltaba a la unidad era corriente. Su cable de alimentación tiene demasiados ohms, que ningún multímetro muestra sin flujo. Con el mando en ON, varios voltios se quedaban en ese cable y el émbolo nunca se movió. Una lectura con carga en los dos extremos del cable lo dice en dos minutos.',
};
