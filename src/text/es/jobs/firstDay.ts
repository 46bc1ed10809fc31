/** The walkthrough: its work order and its steps up to the vacuum tests. */
export const firstDay: Readonly<Record<string, string>> = {
  'One whole job with someone at your elbow: prove the tools, listen to the unit, watch its switch under vacuum, give a verdict, fit the part and prove the repair on the road.':
    'Un trabajo entero con alguien a su lado: pruebe las herramientas, escuche la unidad, observe su interruptor con vacío, dé un veredicto, instale la parte y demuestre la reparación en la carretera.',
  'Prove the meter and the hand pump before you trust them.':
    'Probar el multímetro y la bomba de vacío manual antes de confiar en ellos.',
  'Make the solenoid click with a fused jumper and a ground lead.':
    'Hacer que el solenoide haga clic con un puente con fusible y un cable de prueba.',
  'Watch the sense voltage while vacuum is drawn on a capped unit.':
    'Observar el voltaje de señal mientras se hace vacío en una unidad con tapa.',
  'Clear and convict suspects by entries of the log.':
    'Descartar y señalar sospechosos con anotaciones del registro.',
  "Try a new unit on the bench, test it again as fitted, and have the truck's own monitor pass.":
    'Probar una unidad nueva en el banco, probarla otra vez ya instalada, y hacer que el propio monitor del camión apruebe.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [118 400 miles|190 550 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [118 400 millas|190 550 km]',
  'The yellow lamp came on again on Tuesday, eleven days after it was put out. The driver notices nothing else. The truck is needed for meter reading on Thursday.':
    'La luz amarilla se encendió otra vez el martes, once días después de que se apagó. El conductor no nota nada más. El camión se necesita el jueves para leer medidores.',
  'Filler cap renewed in spring. The lamp came back after some [300 miles|480 km].':
    'Tapón de llenado renovado en primavera. La luz volvió después de unas [300 millas|480 km].',
  'All three hoses at the leak detection pump renewed last month. The lamp came back after some [240 miles|390 km].':
    'Las tres mangueras de la bomba de detección de fugas renovadas el mes pasado. La luz volvió después de unas [240 millas|390 km].',
  'Smoke test by the day shift last week, air hose plugged. No smoke seen anywhere on the truck.':
    'Prueba de humo del turno de día la semana pasada, manguera de aire con tapón. No se vio humo en ningún lugar del camión.',
  'Note of the day shift, "Probably the pump. Prove it before you order it."':
    'Nota del turno de día: "Probablemente la bomba. Demuéstrelo antes de pedirla."',
  'The vacuum switch of this unit never closed. Every part of the way to it was proven first. The meter on the battery, the pump on its own closed hose, the pull-up and the wire by the 9 volts at rest, the winding and the plunger by their clicks, the canister side by the hold. So when the voltage stayed at 9 under vacuum, only the switch was left. To the controller a sense wire that is broken looks just the same. It is the 9 volts at cavity 3 that tell the two apart.':
    'El interruptor de vacío de esta unidad nunca cerró. Cada parte del camino hasta él se probó antes. El multímetro en la batería, la bomba en su propia manguera cerrada, el pull-up y el cable por los 9 voltios en reposo, el devanado y el émbolo por sus clics, el lado del cánister por la retención. Así que, cuando el voltaje siguió en 9 con vacío, solo quedaba el interruptor. Para el módulo de control, un cable de señal roto se ve exactamente igual. Son los 9 voltios en la cavidad 3 los que distinguen a los dos.',
  'Read the work order, cautions and all. Then take the job.':
    'Lea la orden de trabajo, con sus precauciones. Luego tome el trabajo.',
  'Press the button that takes the job.': 'Oprima el botón que toma el trabajo.',
  'Read the codes and their freeze data first, before anything can change them. What is read is written down.':
    'Lea primero los códigos y sus datos congelados, antes de que algo los pueda cambiar. Lo que se lee queda anotado.',
  'Turn the key to on. On the reader, page Codes, read the codes.':
    'Ponga la llave en ON. En el lector, página Códigos, lea los códigos.',
  'You may ask the coach at any time. It knows your readings, not the answer, and asking costs no points. Ask once now, so that you know how.':
    'Puede preguntar al instructor en cualquier momento. Conoce sus lecturas, no la respuesta, y preguntar no cuesta puntos. Pregunte una vez ahora, para que sepa cómo.',
  'Turn the key off. Open the coach and ask for a question.':
    'Ponga la llave en OFF. Abra el instructor y pida una pregunta.',
  'First the meter. You cannot trust a reading from a lead nobody has tried. The battery is a known source.':
    'Primero el multímetro. No se puede confiar en una lectura de una punta que nadie ha probado. La batería es una fuente conocida.',
  'Meter on DC volts. Red lead on battery positive, black lead on battery negative.':
    'Multímetro en voltios CD. Punta roja en el positivo de la batería, punta negra en el negativo de la batería.',
  'About 12.6 volts. The meter and both leads are good. Write it down.':
    'Unos 12.6 voltios. El multímetro y las dos puntas están bien. Anótelo.',
  'Log the reading.': 'Anote la lectura.',
  'Now the hand pump. Close its own hose and see whether it holds.':
    'Ahora la bomba de vacío manual. Cierre su propia manguera y vea si retiene.',
  "Push a plug into the end of the pump's hose. Give the pump four full strokes.":
    'Meta un tapón en el extremo de la manguera de la bomba. Dé a la bomba cuatro carreras completas.',
  'Leave it alone for a full minute. Watch the needle. If it creeps, the pump leaks and cannot judge anything.':
    'Déjela quieta un minuto entero. Observe la aguja. Si se va moviendo, la bomba tiene fuga y no puede juzgar nada.',
  'Do not touch the handle or the release. Wait one minute.':
    'No toque la palanca ni el alivio. Espere un minuto.',
  'It holds. Write that down too.': 'Retiene. Anote eso también.',
  'Let the vacuum off and see the needle come home to zero. Then free the hose.':
    'Suelte el vacío y vea la aguja regresar a cero. Luego libere la manguera.',
  "Open the release. Shut it again. Take the plug out of the pump's hose.":
    'Abra el alivio. Ciérrelo otra vez. Saque el tapón de la manguera de la bomba.',
  'Now the unit. Take the canister hose off and look into its open end. Fuel or charcoal in there would spoil the next unit too. Then close it at once, for there is fuel vapour in it.':
    'Ahora la unidad. Quite la manguera del cánister y mire en su extremo abierto. Combustible o carbón ahí adentro echaría a perder también la siguiente unidad. Luego ciérrela de inmediato, porque tiene vapor de combustible.',
  'Take off the canister hose. From Hands and eyes take the eye and look at the canister hose. Then push a plug into its open end.':
    'Quite la manguera del cánister. De Manos y ojos tome el ojo y mire la manguera del cánister. Luego meta un tapón en su extremo abierto.',
  'The air hose comes off too, and gets the other plug. Water or dirt in the air filter spoils a unit as well.':
    'La manguera de aire también se quita, y lleva el otro tapón. Agua o suciedad en el filtro de aire también echa a perder una unidad.',
  'Take off the air hose. Push the second plug into its open end. Take the eye again and look at the air filter.':
    'Quite la manguera de aire. Meta el segundo tapón en su extremo abierto. Tome otra vez el ojo y mire el filtro de aire.',
  'You have seen something already. The canister hose was on its port. A split that is large enough for this code would have shown. Clear it on the suspect board, and cite what you saw. A mark counts only as far as its entries carry it.':
    'Usted ya vio algo. La manguera del cánister estaba en su puerto. Una rajadura bastante grande para este código se habría visto. Descártela en el tablero de sospechosos, y cite lo que vio. Una marca cuenta solo en la medida en que sus anotaciones la sostienen.',
  'Open the suspects. Mark the canister hose cleared. Cite the entry of your look at it.':
    'Abra los sospechosos. Marque la manguera del cánister como descartada. Cite la anotación de cuando la miró.',
  'The key is off. Good. Part the plug at the unit.':
    'La llave está en OFF. Bien. Desconecte el conector de la unidad.',
  'With the key off, part the plug.': 'Con la llave en OFF, desconecte el conector.',
  'The solenoid needs a ground. It sits between terminals 1 and 2 of the unit.':
    'El solenoide necesita una tierra. Está entre los terminales 1 y 2 de la unidad.',
  'Take the meter leads off. Put the ground lead from terminal 2 of the unit to battery negative.':
    'Quite las puntas del multímetro. Ponga el cable de prueba del terminal 2 de la unidad al negativo de la batería.',
  'The fused jumper feeds it. Make it at the unit first, with its switch off, and at the battery last.':
    'El puente con fusible lo alimenta. Conéctelo primero en la unidad, con su interruptor apagado, y al último en la batería.',
  "Put the jumper's far end on terminal 1 of the unit, then its supply end on battery positive.":
    'Ponga el otro extremo del puente en el terminal 1 de la unidad, luego su pinza de alimentación en el positivo de la batería.',
  'Switch it on and off, three times. Listen. One click may be the lucky one of a sticking plunger.':
    'Enciéndalo y apáguelo, tres veces. Escuche. Un solo clic puede ser el afortunado de un émbolo que se pega.',
  'Switch the jumper on, listen, switch it off. Do it three times. Never leave it on for more than ten seconds.':
    'Encienda el puente, escuche, apáguelo. Hágalo tres veces. Nunca lo deje encendido más de diez segundos.',
  'It clicks every time. So the winding and the plunger work. Write it down.':
    'Hace clic cada vez. Así que el devanado y el émbolo trabajan. Anótelo.',
  'Log within ten seconds of the last click.': 'Anote antes de que pasen diez segundos del último clic.',
  'Clear the jumper and the ground lead away, battery end first.':
    'Retire el puente y el cable de prueba, primero el extremo de la batería.',
  'Lift all four ends.': 'Levante los cuatro extremos.',
  'Mate the plug again, with the key still off. Then move it. A lock that did not catch shows only so.':
    'Conecte otra vez el conector, con la llave aún en OFF. Luego muévalo. Un seguro que no agarró solo así se nota.',
  'Mate the plug until its lock clicks. Take hold of it and wiggle it.':
    'Conecte el conector hasta que su seguro haga clic. Tómelo y muévalo.',
};
