/** The introduction: its summary, what it teaches, its steps and its last words. */
export const firstMinutes: Readonly<Record<string, string>> = {
  'Five minutes at the bench': 'Cinco minutos en el banco',
  'Never held a meter? Someone stands beside you for five minutes: prove the meter, make the solenoid click, and watch the sense voltage fall when you draw vacuum. Nothing is marked.':
    '¿Nunca ha tenido un multímetro en la mano? Alguien lo acompaña cinco minutos: pruebe el multímetro, haga que el solenoide haga clic y vea caer el voltaje de señal al hacer vacío. Nada se califica.',
  'set the meter, put its two leads on two points and read the difference':
    'ajustar el multímetro, poner sus dos puntas en dos puntos y leer la diferencia',
  'prove a meter on a battery before you trust it':
    'probar un multímetro en una batería antes de confiar en él',
  'part and mate a plug with the key off': 'desconectar y conectar un conector con la llave en OFF',
  'make a solenoid click with a ground lead and a fused jumper':
    'hacer que un solenoide haga clic con un cable de prueba y un puente con fusible',
  'read a wire from behind with a back-probe pin': 'leer un cable por detrás con una aguja de sondeo',
  'draw vacuum with the hand pump and watch a switch close':
    'hacer vacío con la bomba manual y ver cerrar un interruptor',
  'log what you read, so that it counts': 'anotar lo que lee, para que cuente',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [121 000 miles|194 750 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [121 000 millas|194 750 km]',
  'None. The truck is in for its yearly service and stands here until noon. Nothing is wrong with it, so you may practise on it.':
    'Ninguna. El camión está aquí hasta mediodía para su servicio anual. No tiene nada malo, así que puede practicar con él.',
  'This is the meter. It shows the difference between two points, one for each lead. For a battery that is DC volts, the V with a straight line.':
    'Este es el multímetro. Muestra la diferencia entre dos puntos, uno para cada punta. Para una batería son voltios CD, la V con una línea recta.',
  "Click or tap DC volts on the meter's row. By keys, Tab to the row, go along it with the arrows and press Space.":
    'Haga clic o toque voltios CD en la fila del multímetro. Con teclas, Tab hasta la fila, recórrala con las flechas y oprima Espacio.',
  'The black lead goes on the point that you measure from. On a truck that is battery negative.':
    'La punta negra va en el punto desde el que mide. En un camión es el negativo de la batería.',
  'Drag the black lead to battery negative, or click or tap the lead first and then the post. By keys, press Enter on the lead and choose the place from the list.':
    'Arrastre la punta negra al negativo de la batería, o haga clic o toque primero la punta y luego el borne. Con teclas, oprima Enter en la punta y elija el lugar en la lista.',
  'The red lead goes on the point that you ask about. Then read the window.':
    'La punta roja va en el punto por el que pregunta. Luego lea la pantalla.',
  'Put the red lead on battery positive, in the same way. Let the reading settle.':
    'Ponga la punta roja en el positivo de la batería, de la misma manera. Deje que la lectura se estabilice.',
  'About 12.6 volts. You knew beforehand what a full battery gives, so this has proven the meter and both of its leads. Whatever you want to count later, log it.':
    'Unos 12.6 voltios. Usted ya sabía lo que da una batería llena, así que esto probó el multímetro y sus dos puntas. Todo lo que quiera que cuente después, anótelo.',
  'Press Log this reading.': 'Oprima Anotar esta lectura.',
  'Next the unit, the leak detection pump. It has a solenoid, and you are going to hear it. Look at the key first. It is off, and only so is a plug parted.':
    'Sigue la unidad, la bomba de detección de fugas. Tiene un solenoide, y usted lo va a oír. Mire primero la llave. Está en OFF, y solo así se desconecta un conector.',
  'Press the catch of the plug, between its two halves.':
    'Oprima el seguro del conector, entre sus dos mitades.',
  'A solenoid needs a feed and a ground. First the ground, on terminal 2 of the unit.':
    'Un solenoide necesita alimentación y tierra. Primero la tierra, en el terminal 2 de la unidad.',
  'Put one end of the ground lead on terminal 2 of the unit half, and its other end on battery negative.':
    'Ponga un extremo del cable de prueba en el terminal 2 de la mitad de la unidad, y su otro extremo en el negativo de la batería.',
  'The feed comes through the fused jumper. Its switch stays off. It is made at the unit first and at the battery last, so that no spark is drawn at the unit.':
    'La alimentación llega por el puente con fusible. Su interruptor queda apagado. Se conecta primero en la unidad y al último en la batería, para que no salte ninguna chispa en la unidad.',
  'Put the far end of the jumper on terminal 1 of the unit half. Then put its supply clip on battery positive.':
    'Ponga el otro extremo del puente en el terminal 1 de la mitad de la unidad. Luego ponga su pinza de alimentación en el positivo de la batería.',
  'Listen. The plunger pulls in with a click, and drops out with another. Three times, because one click may be the lucky one.':
    'Escuche. El émbolo entra con un clic y sale con otro. Tres veces, porque un solo clic puede ser el afortunado.',
  'Switch the jumper on, listen, switch it off. Do it three times. Each click is written beside the unit as well. Never leave it on for more than ten seconds.':
    'Encienda el puente, escuche, apáguelo. Hágalo tres veces. Cada clic también se escribe junto a la unidad. Nunca lo deje encendido más de diez segundos.',
  'It clicks every time. Clear both leads away, the battery end of the jumper first. Then mate the plug, with the key still off, and move it. A lock that did not catch shows only so.':
    'Hace clic cada vez. Retire los dos cables, primero el extremo del puente que está en la batería. Luego conecte el conector, con la llave aún en OFF, y muévalo. Un seguro que no agarró solo así se nota.',
  'Take each of the four ends and lay it on the mat. Press the catch of the plug again. Then press the plug at the unit to wiggle it.':
    'Tome cada uno de los cuatro extremos y déjelo en el tapete. Oprima otra vez el seguro del conector. Luego oprima el conector en la unidad para moverlo.',
  'Now its vacuum switch. Two hoses have to come off. There is fuel vapour in them, so each is closed at once with a plug.':
    'Ahora su interruptor de vacío. Hay que quitar dos mangueras. Tienen vapor de combustible, así que cada una se cierra de inmediato con un tapón.',
  'Take the canister hose off and lay it on the mat. Push plug A into its open end. Take the air hose off, and push plug B into its end.':
    'Quite la manguera del cánister y déjela en el tapete. Meta el tapón A en su extremo abierto. Quite la manguera de aire, y meta el tapón B en su extremo.',
  'At rest the unit is open from the canister port to the air port. Cap the air port, or you will pump the room. The hand pump goes on the canister port.':
    'En reposo la unidad está abierta del puerto del cánister al puerto de aire. Ponga tapa al puerto de aire, o bombeará el taller. La bomba manual va en el puerto del cánister.',
  "Put cap A on the air port and press its clamp once, hand tight. Put the pump's hose on the canister port and press its clamp once too.":
    'Ponga la tapa A en el puerto de aire y oprima su abrazadera una vez, apretada a mano. Ponga la manguera de la bomba en el puerto del cánister y oprima también su abrazadera una vez.',
  'Cavity 3 is the sense wire, from the switch to the controller. Go in from behind with a back-probe pin. A bare tip in the front would spread the terminal. Key on, engine off, and the controller puts some 9 volts on this wire.':
    'La cavidad 3 es el cable de señal, del interruptor al módulo de control. Entre por detrás con una aguja de sondeo. Una punta metida por el frente abriría el terminal. Llave en ON, motor apagado, y el módulo de control pone unos 9 voltios en este cable.',
  'Press cavity 3 to put a pin in. Put the red lead on it. The black lead is still on battery negative. Turn the key to on, and let the reading settle.':
    'Oprima la cavidad 3 para meter una aguja. Ponga la punta roja en ella. La punta negra sigue en el negativo de la batería. Ponga la llave en ON, y deje que la lectura se estabilice.',
  'Now watch the meter and draw vacuum. The switch closes to ground and pulls the sense voltage down to almost nothing, well under [5 inHg|17 kPa].':
    'Ahora observe el multímetro y haga vacío. El interruptor cierra a tierra y baja el voltaje de señal a casi nada, mucho antes de [5 inHg|17 kPa].',
  "Pull the pump's handle out and let it go back in, or press Full stroke. Go on until the gauge stands at [5 inHg|17 kPa] or more.":
    'Jale la palanca de la bomba y déjela regresar, u oprima Carrera completa. Siga hasta que el vacuómetro marque [5 inHg|17 kPa] o más.',
  'Let the vacuum off. The switch opens, and the voltage comes back. So that is what good looks like.':
    'Suelte el vacío. El interruptor abre, y el voltaje regresa. Así se ve lo que está bien.',
  "Press the pump's release lever. When the 9 volts are back, turn the key off.":
    'Oprima la palanca de alivio de la bomba. Cuando regresen los 9 voltios, ponga la llave en OFF.',
  'That is nearly all that hands do on this bench. A job adds the thinking. Test by test you find out which part is bad and prove it, and at the end you put everything back as it was.':
    'Eso es casi todo lo que hacen las manos en este banco. Un trabajo agrega el pensar. Prueba tras prueba usted averigua qué parte está mala y lo demuestra, y al final deja todo como estaba.',
};
