/** The walkthrough's steps from the vacuum tests to the debrief. */
export const firstDayLater: Readonly<Record<string, string>> = {
  "Cavity 3 is the sense wire. Go in from the wire side with a pin. A tip in the terminal's face would spread it. Measure to battery negative, not to the body of the truck.":
    'La cavidad 3 es el cable de señal. Entre por el lado de los cables con una aguja. Una punta en la cara del terminal lo abriría de más. Mida contra el negativo de la batería, no contra la carrocería del camión.',
  'Put a back-probe pin into cavity 3. Meter on DC volts, red lead on the wire side of cavity 3, black lead on battery negative.':
    'Meta una aguja de sondeo en la cavidad 3. Multímetro en voltios CD, punta roja en el lado de los cables de la cavidad 3, punta negra en el negativo de la batería.',
  'Key on, engine off. The controller feeds this wire through a resistor. With the switch open you should see about 9 volts. Write it down.':
    'Llave en ON, motor apagado. El módulo de control alimenta este cable a través de una resistencia. Con el interruptor abierto usted debe ver unos 9 voltios. Anótelo.',
  'Turn the key to on, let the reading settle, log it.':
    'Ponga la llave en ON, deje que la lectura se estabilice, anótela.',
  'At rest the vent seat is open, from the canister port straight to the air port. Cap the air port, or you will pump the room.':
    'En reposo el asiento de ventilación está abierto, del puerto del cánister directo al puerto de aire. Ponga tapa al puerto de aire, o va a bombear el aire del taller.',
  'Put a cap on the air port. Turn its clamp hand tight, no more.':
    'Ponga una tapa en el puerto de aire. Apriete su abrazadera a mano, no más.',
  'The pump goes on the canister port.': 'La bomba va en el puerto del cánister.',
  "Put the pump's hose on the canister port. Turn its clamp hand tight.":
    'Ponga la manguera de la bomba en el puerto del cánister. Apriete su abrazadera a mano.',
  'Draw vacuum and watch the meter. A good switch closes well under [5 inHg|17 kPa] and pulls the sense voltage to almost nothing. Still 9 volts? Write it down.':
    'Haga vacío y observe el multímetro. Un interruptor bueno cierra bastante antes de [5 inHg|17 kPa] y lleva el voltaje de señal a casi nada. ¿Todavía 9 voltios? Anótelo.',
  'Stroke until the gauge stands at [5 inHg|17 kPa] or more. Let the reading settle. Log it with the vacuum standing.':
    'Bombee hasta que el vacuómetro marque [5 inHg|17 kPa] o más. Deje que la lectura se estabilice. Anótela con el vacío puesto.',
  'Draw on to [15 inHg|51 kPa] and leave it for 20 seconds. A leaking unit would show it here.':
    'Siga hasta [15 inHg|51 kPa] y déjelo 20 segundos. Una unidad con fuga lo mostraría aquí.',
  'Two or three more full strokes. Then hands off for 20 seconds.':
    'Dos o tres carreras completas más. Luego 20 segundos sin tocar nada.',
  'It holds. So nothing on the canister side of the unit leaks. Write it down.':
    'Retiene. Así que nada en el lado del cánister de la unidad tiene fuga. Anótelo.',
  'Log with the vacuum standing.': 'Anote con el vacío puesto.',
  'Let the vacuum off. See where the needle and the voltage go. Nine volts, all the time. Write it down.':
    'Suelte el vacío. Vea adónde van la aguja y el voltaje. Nueve voltios, todo el tiempo. Anótelo.',
  'Open the release, let the meter settle, log the reading.':
    'Abra el alivio, deje que el multímetro se estabilice, anote la lectura.',
  'Once is not proof. Do it twice more, and let the vacuum off each time.':
    'Una vez no es prueba. Hágalo dos veces más, y suelte el vacío cada vez.',
  'Shut the release, stroke past [5 inHg|17 kPa], let the meter settle, open the release. Twice.':
    'Cierre el alivio, bombee más allá de [5 inHg|17 kPa], deje que el multímetro se estabilice, abra el alivio. Dos veces.',
  'Three times the same. Write it down.': 'Tres veces lo mismo. Anótelo.',
  'To the controller a broken sense wire looks like a switch that stays open. But you read 9 volts at cavity 3, and they came through that wire. So it is whole. Clear it.':
    'Para el módulo de control, un cable de señal roto se ve como un interruptor que sigue abierto. Pero usted leyó 9 voltios en la cavidad 3, y llegaron por ese cable. Así que está entero. Descártelo.',
  'Mark the sense wire cleared. Cite the 9 volts at rest and the first entry under vacuum.':
    'Marque el cable de señal como descartado. Cite los 9 voltios en reposo y la primera anotación con vacío.',
  'It clicks, it holds, the 9 volts are there. But its switch has not closed once in three. Convict the unit, and cite all that says so.':
    'Hace clic, retiene, los 9 voltios están ahí. Pero su interruptor no ha cerrado ni una vez de tres. Señale la unidad, y cite todo lo que lo dice.',
  'Mark the unit convicted. Cite the clicks and every entry of cavity 3, from the first at rest to the last.':
    'Marque la unidad como señalada. Cite los clics y cada anotación de la cavidad 3, desde la primera en reposo hasta la última.',
  'A switch that never closes explains the whole code. Then the feed wire no longer has to. That is clearing as well, by what your entries leave of it.':
    'Un interruptor que nunca cierra explica el código entero. Entonces el cable de alimentación ya no tiene que explicarlo. Eso también es descartar, por lo que sus anotaciones dejan de él.',
  'Mark the feed wire cleared. Cite the same entries as for the unit.':
    'Marque el cable de alimentación como descartado. Cite las mismas anotaciones que para la unidad.',
  'Think before you name it. The pull-up is there. The wire is there. The unit holds vacuum. But its switch has not closed once. Give your verdict, say what is wrong with the part, and cite the entries that show it. A verdict is given once.':
    'Piense antes de nombrarla. El pull-up está. El cable está. La unidad retiene vacío. Pero su interruptor no ha cerrado ni una vez. Dé su veredicto, diga qué tiene mal la parte, y cite las anotaciones que lo muestran. Un veredicto se da una sola vez.',
  'Open the verdict. Name the unit. Say that its switch contact is at fault. Cite the entries that you cited for the unit on the board.':
    'Abra el veredicto. Señale la unidad. Diga que la falla está en el contacto de su interruptor. Cite las anotaciones que citó para la unidad en el tablero.',
  'Key off and clear the way for another unit.': 'Llave en OFF, y haga lugar para otra unidad.',
  'Turn the key off. Lift the leads off cavity 3. Take the pin out. Part the plug.':
    'Ponga la llave en OFF. Quite las puntas de la cavidad 3. Saque la aguja. Desconecte el conector.',
  'New is not the same as good. Try one on the bench before you fit one. The cupboard has a unit that was found good. It gets the same cap and the same pump.':
    'Nuevo no es lo mismo que bueno. Pruebe una en el banco antes de instalar una. El gabinete tiene una unidad que se halló buena. Lleva la misma tapa y la misma bomba.',
  'Take pump hose, cap and engine hose off. Put the known-good unit on the bench. Cap on its air port, pump hose on its canister port, both clamps hand tight, release shut.':
    'Quite la manguera de la bomba, la tapa y la manguera del motor. Ponga en el banco la unidad buena comprobada. Tapa en su puerto de aire, manguera de la bomba en su puerto del cánister, las dos abrazaderas apretadas a mano, alivio cerrado.',
  'Its plug is apart, so its switch can be read in ohms, between terminals 2 and 3. But first the leads themselves. A closed switch has so few ohms that theirs count.':
    'Su conector está desconectado, así que su interruptor se puede leer en ohmios, entre los terminales 2 y 3. Pero primero las puntas mismas. Un interruptor cerrado tiene tan pocos ohmios que los de ellas cuentan.',
  'Meter on ohms. Red tip on the black tip. Let the reading settle and log it.':
    'Multímetro en ohmios. Punta roja contra la punta negra. Deje que la lectura se estabilice y anótela.',
  'At rest the switch is open. The meter shows over range. Write it down.':
    'En reposo el interruptor está abierto. El multímetro muestra fuera de rango. Anótelo.',
  'Red lead on terminal 3 of the unit, black lead on terminal 2. Let the reading settle and log it.':
    'Punta roja en el terminal 3 de la unidad, punta negra en el terminal 2. Deje que la lectura se estabilice y anótela.',
  'Draw vacuum. A good switch closes, and nothing is left but the ohms of your leads.':
    'Haga vacío. Un interruptor bueno cierra, y no quedan más que los ohmios de sus puntas.',
  'Stroke to [5 inHg|17 kPa] or more, let the reading settle, log it.':
    'Bombee hasta [5 inHg|17 kPa] o más, deje que la lectura se estabilice, anótela.',
  "So that is what good looks like. Let the vacuum off and put the truck's own unit back in its place.":
    'Así se ve una buena. Suelte el vacío y regrese a su lugar la unidad del propio camión.',
  "Open the release, then shut it. Lift the meter leads. Take pump hose and cap off. Put the truck's unit back.":
    'Abra el alivio, luego ciérrelo. Levante las puntas del multímetro. Quite la manguera de la bomba y la tapa. Regrese la unidad del camión.',
  'Take a new unit from the parts cupboard and fit it.':
    'Tome una unidad nueva del gabinete de refacciones e instálela.',
  'Renew the unit.': 'Renueve la unidad.',
  'The fitted part gets the test that convicted the old one. Mate its plug first, key off, and move it to check the lock.':
    'La parte instalada recibe la prueba que señaló a la vieja. Primero conecte su conector, llave en OFF, y muévalo para comprobar el seguro.',
  'Mate the plug. Take hold of it and wiggle it.': 'Conecte el conector. Tómelo y muévalo.',
  'Pin, leads, cap and pump go on as they were on the old one.':
    'La aguja, las puntas, la tapa y la bomba van como estaban en la vieja.',
  'Pin into cavity 3. Meter on DC volts, red lead on cavity 3, black lead on battery negative. Cap on the air port, pump hose on the canister port, both clamps hand tight. Release shut.':
    'Aguja en la cavidad 3. Multímetro en voltios CD, punta roja en la cavidad 3, punta negra en el negativo de la batería. Tapa en el puerto de aire, manguera de la bomba en el puerto del cánister, las dos abrazaderas apretadas a mano. Alivio cerrado.',
  'Key on. About 9 volts at rest, as before.': 'Llave en ON. Unos 9 voltios en reposo, como antes.',
  'Turn the key on, let the reading settle, log it.':
    'Ponga la llave en ON, deje que la lectura se estabilice y anótela.',
  'Now draw vacuum. This is what a good switch looks like.':
    'Ahora haga vacío. Así se ve un interruptor bueno.',
  'Let it off. The voltage must come back.': 'Suéltelo. El voltaje debe volver.',
  'Open the release, let the reading settle, log it.':
    'Abra el alivio, deje que la lectura se estabilice, anótela.',
  'Closed under vacuum, open without. The old code is in your log, so it may go.':
    'Cerrado con vacío, abierto sin él. El código viejo está en su registro, así que puede irse.',
  'On the reader, page Codes, clear the codes.': 'En el lector, página Códigos, borre los códigos.',
  'Now put everything back. A hose left off is the next complaint.':
    'Ahora regrese todo a su lugar. Una manguera que queda fuera es la próxima queja.',
  'Key off. Leads off. Pin out. Pump hose and cap off. Plugs out. Canister hose, air hose and engine hose on their ports, clamps hand tight. Release shut.':
    'Llave en OFF. Puntas fuera. Aguja fuera. Manguera de la bomba y tapa fuera. Tapones fuera. Manguera del cánister, manguera de aire y manguera del motor en sus puertos, abrazaderas apretadas a mano. Alivio cerrado.',
  'The bench has passed it. Now the truck has to. Its monitor does not run on every cycle, so drive on until it has run and passed.':
    'El banco la aprobó. Ahora le toca al camión. Su monitor no corre en todos los ciclos, así que siga manejando hasta que haya corrido y aprobado.',
  'Road test of two cycles. If the monitor has not passed by then, drive again.':
    'Prueba de carretera de dos ciclos. Si para entonces el monitor no ha aprobado, maneje otra vez.',
  'What failed once on a drive lights no lamp. It only stands there as pending. So read the codes once more.':
    'Lo que falló una vez en un viaje no enciende ninguna luz. Solo queda como pendiente. Así que lea los códigos una vez más.',
  'Key on. Read the codes. Key off.': 'Llave en ON. Lea los códigos. Llave en OFF.',
  'No code, and the monitor has passed. Close the job and read the debrief, with what really happened drawn out.':
    'Ningún código, y el monitor aprobó. Cierre el trabajo y lea la revisión, con lo que pasó en realidad dibujado.',
  'Close the job.': 'Cierre el trabajo.',
};
