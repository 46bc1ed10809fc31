/** Jobs of circuits that come and go, or only seem alive, and of a tool that lies. */
export const circuitsMore: Readonly<Record<string, string>> = {
  'The quarry road': 'El camino de la cantera',
  'Every time the truck comes back from the quarry intake the lamp is on. Every time it stands in a shop, all is well. Bring the road into the shop.':
    'Cada vez que el camión vuelve de la toma de la cantera, la luz está encendida. Cada vez que está en un taller, todo está bien. Traiga el camino al taller.',
  'Make a fault that comes and goes show itself, with a meter that remembers what the eye misses.':
    'Hacer que se muestre una falla que va y viene, con un multímetro que recuerda lo que el ojo pierde.',
  'Move one stretch of the harness at a time, and say which one answers.':
    'Mover un tramo del arnés a la vez, y decir cuál responde.',
  'Narrow a bad stretch down by the gentlest means before you blame the whole of it.':
    'Acotar un tramo malo con el medio más suave antes de culparlo entero.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [112 700 miles|181 350 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [112 700 millas|181 350 km]',
  'Lamp comes on at the quarry intake, [nine miles|14 km] of washboard. On the town rounds it went out by itself twice. The driver has learnt to live with it, the emissions office has not.':
    'La luz se enciende en la toma de la cantera, [nueve millas|14 km] de camino ondulado. En las rondas por la ciudad se apagó sola dos veces. El conductor aprendió a vivir con ella; la oficina de emisiones no.',
  'May, two shops. "No fault found" on both sheets. Codes cleared each time.':
    'Mayo, dos talleres. "No se halló falla" en las dos hojas. Códigos borrados cada vez.',
  'June, leak detection pump exchanged for a used one on trial, plug measured. Exchanged back.':
    'Junio, bomba de detección de fugas cambiada por una usada como prueba, conector medido. Se regresó la original.',
  'July, engine mounts renewed. They were soft.': 'Julio, soportes del motor renovados. Estaban blandos.',
  'Resistance of all three wires measured end to end, truck standing. All good.':
    'Resistencia de los tres cables medida de extremo a extremo, camión parado. Todo bien.',
  "Terminal 1 of the harness half is spread, too little for the eye and enough for the road. It holds the pin of the unit by luck. On town streets it touches, on washboard it lets go for moments, and the controller sees the coil gone from its feed. Standing still, everything measures as it should, and ohms from end to end do not even pass the place. With the solenoid off the feed shows nothing. Record the highest reading, move the plug, and volts come up whenever the coil is lost. With it on, the plunger clicks in time with the hand. Moving the ground wire does nothing. The drag gauge then tells the terminal from the wire behind it. A meter tip does not belong in a terminal's face, not even in a hurry.":
    'El terminal 1 de la mitad del arnés está abierto de más, muy poco para el ojo y bastante para el camino. Sujeta el pin de la unidad por suerte. En las calles hace contacto, en el camino ondulado suelta por momentos, y el módulo de control ve que la bobina desaparece de su alimentación. Parado, todo mide como debe, y los ohmios de extremo a extremo ni siquiera pasan por ese lugar. Con el solenoide apagado, la alimentación no muestra nada. Grabe la lectura más alta, mueva el conector, y aparecen voltios cada vez que se pierde la bobina. Con él encendido, el émbolo hace clic al ritmo de la mano. Mover el cable de tierra no hace nada. El calibre de arrastre distingue después el terminal del cable que está detrás. Una punta de multímetro no va en la cara de un terminal, ni con prisa.',
  'The unit on the shelf': 'La unidad en la repisa',
  'No lamp, no code, no complaint. But the inspection sheet says "does not hold", and a new unit lies on the shelf, ready to go in. You are asked to sign for it.':
    'Sin luz, sin código, sin queja. Pero la hoja de inspección dice "no retiene", y una unidad nueva está en la repisa, lista para entrar. A usted le piden que firme.',
  'Check a reading that condemns a part before you act on it.':
    'Comprobar una lectura que condena una parte antes de actuar por ella.',
  'Prove every tool before you trust what it says of a part.':
    'Probar cada herramienta antes de confiar en lo que dice de una parte.',
  'Give the verdict that the readings carry, whatever the sheet says.':
    'Dar el veredicto que las lecturas sostienen, diga lo que diga la hoja.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [91 400 miles|147 100 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [91 400 millas|147 100 km]',
  'The district plans to have the leak detection pump renewed with the yearly inspection, on the word of the sheet. The driver has nothing to report. Please confirm, then fit the unit that lies on the shelf.':
    'El distrito piensa renovar la bomba de detección de fugas con la inspección anual, por lo que dice la hoja. El conductor no tiene nada que informar. Favor de confirmar, y luego instalar la unidad que está en la repisa.',
  'Summer, lamp on with P0455. Canister hose found off its barb and put back, new clamp. Code cleared.':
    'Verano, luz encendida con P0455. Manguera del cánister hallada fuera de su espiga y puesta de nuevo, abrazadera nueva. Código borrado.',
  'The lamp has stayed out since, for some [700 miles|1130 km].':
    'Desde entonces la luz ha seguido apagada, unas [700 millas|1130 km].',
  'Inspection, Tuesday. P2400 read while the plug lay parted with the key on. Plug mated, code cleared, not seen again.':
    'Inspección, martes. P2400 leído mientras el conector estaba desconectado con la llave en ON. Conector conectado, código borrado, no se vio más.',
  'Inspection, Tuesday. Unit tested here by hand pump. Sheet says, "Drawn down, gone in a minute. Does not hold."':
    'Inspección, martes. Unidad probada aquí con bomba de vacío manual. La hoja dice: "Se hizo vacío, se perdió en un minuto. No retiene."',
  'Unit ordered on Wednesday, here since Friday, still in its box.':
    'Unidad pedida el miércoles, aquí desde el viernes, todavía en su caja.',
  "Nothing is wrong with the truck. It is the seal of this bench's hand pump that leaks, and it condemned a good unit on Tuesday. On its own closed hose the pump loses its vacuum just as fast as it did on the unit, and a minute spent on that saves 385 dollars. With another pump, proven first, the unit holds, its switch makes and lets go, its solenoid clicks and drops what it should. P2400 was the inspection's own making. The plug was apart with the key on. The summer's code had its cause and its cure, and the monitor has passed ever since. The unit on the shelf goes back unopened.":
    'El camión no tiene nada malo. Es el sello de la bomba de vacío manual de este banco el que tiene fuga, y el martes condenó una unidad buena. En su propia manguera cerrada, la bomba pierde su vacío tan rápido como lo perdió en la unidad, y un minuto gastado en eso ahorra 385 dólares. Con otra bomba, probada antes, la unidad retiene, su interruptor cierra y abre, su solenoide hace clic y tiene la caída que debe. El P2400 lo hizo la propia inspección. El conector estaba desconectado con la llave en ON. El código del verano tuvo su causa y su remedio, y el monitor ha aprobado desde entonces. La unidad de la repisa se devuelve sin abrir.',
  'Voltage at the plug': 'Voltaje en el conector',
  'The new unit is as silent as the old one, though somebody found voltage on its feed. Find out what that voltage is worth, and who is meant to supply the real one.':
    'La unidad nueva está tan callada como la vieja, aunque alguien halló voltaje en su alimentación. Averigüe qué vale ese voltaje, y quién debe dar el de verdad.',
  'Tell a voltage that can do work from one that only looks like it.':
    'Distinguir un voltaje que puede trabajar de uno que solo lo parece.',
  'Follow a command from where it is given to where it should arrive.':
    'Seguir un comando desde donde se da hasta donde debe llegar.',
  'Convict an item by what goes in and what does not come out, with everything around it proven sound.':
    'Señalar una parte por lo que entra y lo que no sale, con todo a su alrededor demostrado sano.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [104 900 miles|168 800 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [104 900 millas|168 800 km]',
  'Lamp on, same code as in March. The district has paid for one leak detection pump already and will not pay for another without a reading that shows why.':
    'Luz encendida, el mismo código que en marzo. El distrito ya pagó una bomba de detección de fugas y no pagará otra sin una lectura que muestre por qué.',
  'March, code found at the yearly inspection. Fuse found whole.':
    'Marzo, código hallado en la inspección anual. Fusible hallado entero.',
  'March, plug parted, key on, feed terminal measured to ground. Note, "Nearly 6 V there, so feed is alive, unit must be dead." Unit renewed.':
    'Marzo, conector desconectado, llave en ON, terminal de alimentación medido contra tierra. Nota: "Casi 6 V ahí, así que la alimentación está viva, la unidad debe estar muerta." Unidad renovada.',
  'March, code cleared. It was back on the second trip.':
    'Marzo, código borrado. Volvió en el segundo viaje.',
  'The old unit was put on a bench since. It clicks.':
    'Después, la unidad vieja se puso en un banco. Hace clic.',
  'The output stage of the controller does not switch. The nearly 6 V at the parted plug are a trickle through a large resistor, by which the controller looks for an open circuit. Put the coil on it and nothing is left. With the plug mated and the solenoid commanded on, the feed stood at nothing at both of its ends, while the fuse had battery voltage on both sides. The unit clicked from the jumper, the coil measured 32 ohms, and the feed wire ran through, free of ground. Supply in, command given, load and wire sound, nothing out. That is the only way to convict a controller.':
    'La etapa de salida del módulo de control no conmuta. Los casi 6 V en el conector desconectado son un hilo de corriente por una resistencia grande, con el que el módulo de control busca un circuito abierto. Póngale la bobina y no queda nada. Con el conector conectado y el solenoide con comando de encendido, la alimentación estaba a nada en sus dos extremos, mientras el fusible tenía voltaje de batería en los dos lados. La unidad hizo clic con el puente, la bobina midió 32 ohmios, y el cable de alimentación tenía continuidad, sin contacto a tierra. Alimentación adentro, comando dado, carga y cable sanos, nada afuera. Es la única manera de señalar un módulo de control.',
};
