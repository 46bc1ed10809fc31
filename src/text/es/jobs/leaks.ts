/** Jobs whose fault is a leak, or what is taken for one. */
export const leaks: Readonly<Record<string, string>> = {
  'Every hose is new': 'Todas las mangueras nuevas',
  'A very small leak, found by the controller and by nobody else. The hoses have all been renewed. What is left, and can you prove it?':
    'Una fuga muy pequeña, hallada por el módulo de control y por nadie más. Todas las mangueras se renovaron. ¿Qué queda, y puede usted demostrarlo?',
  'Separate the unit from its hoses before you judge either.':
    'Separar la unidad de sus mangueras antes de juzgar a una o a otras.',
  'Let the gauge and the meter speak together.': 'Dejar que el vacuómetro y el multímetro hablen juntos.',
  'Cite a reading that a good unit could not have given.':
    'Citar una lectura que una unidad buena no pudo haber dado.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [121 900 miles|196 200 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [121 900 millas|196 200 km]',
  'Yellow lamp on, nothing else. It has been put out three times since June. Each time it stayed out for one to two weeks of pump-station rounds, then it came back with the same code. The district asks for an end to it.':
    'Luz amarilla encendida, nada más. Se ha apagado tres veces desde junio. Cada vez siguió apagada de una a dos semanas de rondas por las estaciones de bombeo, y luego volvió con el mismo código. El distrito pide que esto termine.',
  'June, filler cap renewed. The lamp came back after some [280 miles|450 km].':
    'Junio, tapón de llenado renovado. La luz volvió después de unas [280 millas|450 km].',
  'July, canister hose and air hose renewed. The lamp came back after some [310 miles|500 km].':
    'Julio, manguera del cánister y manguera de aire renovadas. La luz volvió después de unas [310 millas|500 km].',
  'August, engine vacuum hose renewed, all clamps new. The lamp came back after some [260 miles|420 km].':
    'Agosto, manguera de vacío del motor renovada, todas las abrazaderas nuevas. La luz volvió después de unas [260 millas|420 km].',
  "August, smoke test with the air hose plugged and the pump's ports clamped off. No smoke seen.":
    'Agosto, prueba de humo con tapón en la manguera de aire y los puertos de la bomba cerrados. No se vio humo.',
  'Canister dry, no fuel in it. Filter on the air hose clean.':
    'Cánister seco, sin combustible. Filtro de la manguera de aire limpio.',
  'The parts desk can have a new unit here by noon, no returns on electrical parts.':
    'Refacciones puede tener aquí una unidad nueva a mediodía; las partes eléctricas no se devuelven.',
  'The capsule of the vacuum switch is torn by about [20 thousandths of an inch|half a millimetre]. The switch still makes under vacuum, and the solenoid still clicks, so anyone who looks only at the meter while stroking finds a good unit. It is the hold that convicts it. With the pump proven on its own closed hose, clamps hand tight and the air port capped, the needle falls in seconds, and the sense voltage comes back by itself. Air gets into the canister side through the unit. To the controller that is a very small leak somewhere, and no hose will ever cure it.':
    'La cápsula del interruptor de vacío tiene una rotura de cerca de [20 milésimas de pulgada|medio milímetro]. El interruptor todavía cierra con vacío, y el solenoide todavía hace clic, así que quien solo mira el multímetro mientras bombea encuentra una unidad buena. Es la retención la que la señala. Con la bomba probada en su propia manguera cerrada, las abrazaderas apretadas a mano y el puerto de aire con tapa, la aguja cae en segundos y el voltaje de señal vuelve por sí solo. Entra aire al lado del cánister a través de la unidad. Para el módulo de control es una fuga muy pequeña en algún lugar, y ninguna manguera la va a corregir.',
  'Everyone looked': 'Todos miraron',
  'Three people have been over this truck with a torch. The very small leak is still there. Time to use something better than eyes.':
    'Tres personas revisaron este camión con una linterna. La fuga muy pequeña sigue ahí. Es hora de usar algo mejor que los ojos.',
  'Clear the unit by its own hold before you search the rest of the truck.':
    'Descartar la unidad por su propia retención antes de buscar en el resto del camión.',
  'Use low-pressure smoke properly, with inert gas and with the vent closed off.':
    'Usar bien el humo a baja presión, con gas inerte y con la ventilación cerrada.',
  "Prove a repair of the vapour side by the controller's own monitor, on the road.":
    'Demostrar una reparación del lado de vapor con el propio monitor del módulo de control, en la carretera.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [78 050 miles|125 600 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [78 050 millas|125 600 km]',
  'Yellow lamp on for the third week. The driver parks it beside the pump house door and thinks that he smells petrol there on warm afternoons. The smell is gone by morning.':
    'Luz amarilla encendida por tercera semana. El conductor lo estaciona junto a la puerta de la casa de bombas y cree que ahí huele a gasolina en las tardes calurosas. En la mañana ya no huele.',
  'Two weeks ago, hoses and filler cap looked at by the driver. Nothing found.':
    'Hace dos semanas, mangueras y tapón de llenado revisados a la vista por el conductor. No se halló nada.',
  'Last week, canister, hoses and cap looked at by the yard. Nothing found.':
    'La semana pasada, cánister, mangueras y tapón revisados a la vista en el patio. No se halló nada.',
  'Monday, the same by the lead hand, from below, on the lift. Nothing found.':
    'Lunes, lo mismo por el encargado, desde abajo, en el elevador. No se halló nada.',
  'No part has been renewed and nothing has been measured.':
    'No se ha renovado ninguna parte y no se ha medido nada.',
  'The seal of the filler cap leaks by some [28 thousandths of an inch|seven tenths of a millimetre]. It looks whole, and three people were right to say so. Eyes find nothing that small. The unit held its vacuum alone, with the pump proven first, so the leak had to be on the other side of the canister hose. Smoke, blown gently into that hose, filled the vessel and came out in one place. That took four minutes to see and twenty dollars to mend. The road test closed the matter, for the controller measures this leak better than any of us.':
    'El sello del tapón de llenado fuga por unas [28 milésimas de pulgada|siete décimas de milímetro]. Se ve entero, y tres personas tuvieron razón al decirlo. Los ojos no encuentran nada tan pequeño. La unidad retuvo su vacío sola, con la bomba probada antes, así que la fuga tenía que estar del otro lado de la manguera del cánister. El humo, soplado suavemente en esa manguera, llenó el recipiente y salió por un solo lugar. Verlo tomó cuatro minutos y corregirlo, veinte dólares. La prueba de carretera cerró el asunto, porque el módulo de control mide esta fuga mejor que cualquiera de nosotros.',
};
