/** Jobs of leaks that come back, or were never there. */
export const leaksTwice: Readonly<Record<string, string>> = {
  'Third unit this year': 'La tercera unidad este año',
  'Each new unit passes, each lasts a few weeks. The district thinks that it has been sold bad parts. Find out what is bad now, and whether the district is right.':
    'Cada unidad nueva aprueba, cada una dura unas semanas. El distrito cree que le vendieron partes malas. Averigüe qué está mal ahora, y si el distrito tiene razón.',
  'Convict the failed part by its own test, even when history makes it look certain.':
    'Señalar la parte que falló por su propia prueba, aunque el historial la haga parecer segura.',
  'Look for the cause behind a part that fails twice.':
    'Buscar la causa detrás de una parte que falla dos veces.',
  'Let the monitor run often enough on the road to show that the repair lasts.':
    'Dejar que el monitor corra en la carretera las veces suficientes para mostrar que la reparación dura.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [141 500 miles|227 700 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [141 500 millas|227 700 km]',
  'The lamp is on again. Two units this year, both new, both from the dealer. The district asks for a third one free of charge, and wants it in writing that the first two were faulty.':
    'La luz está encendida otra vez. Dos unidades este año, las dos nuevas, las dos de la agencia. El distrito pide una tercera sin cargo, y quiere por escrito que las dos primeras eran defectuosas.',
  'January, lamp on. Unit renewed, tested after fitting, passed. Lamp out.':
    'Enero, luz encendida. Unidad renovada, probada ya instalada, aprobó. Luz apagada.',
  'March, lamp on. Unit renewed by the same shop, tested after fitting, passed. Lamp out.':
    'Marzo, luz encendida. Unidad renovada por el mismo taller, probada ya instalada, aprobó. Luz apagada.',
  'Both old units went back to the dealer unopened. No report.':
    'Las dos unidades viejas regresaron a la agencia sin abrir. Ningún informe.',
  'Truck works the gravel pits and carries a full water tank on most days.':
    'El camión trabaja en las graveras y casi todos los días lleva lleno el tanque de agua.',
  'Hoses, cap and filter are as they came with the truck.':
    'Mangueras, tapón y filtro son los que traía el camión.',
  'The capsule of the switch is torn again, and the hold convicts it as it would have convicted the first two. But the unit is the victim. The canister sheds its charcoal, and every purge and every stroke carries grains up the hose and into the unit. Whoever fits a third unit and drives two cycles sees the monitor fail as before. One look into the open end of the canister hose, before the plug goes in, costs a minute. A part that fails twice has a cause, and the cause is repaired with it. The first two units were not faulty when they were sold.':
    'La cápsula del interruptor está rota otra vez, y la retención la señala como habría señalado a las dos primeras. Pero la unidad es la víctima. El cánister suelta su carbón, y cada purga y cada carrera llevan granos por la manguera hasta la unidad. Quien instala una tercera unidad y maneja dos ciclos ve reprobar el monitor como antes. Una mirada al extremo abierto de la manguera del cánister, antes de poner el tapón, cuesta un minuto. Una parte que falla dos veces tiene una causa, y la causa se repara con ella. Las dos primeras unidades no eran defectuosas cuando se vendieron.',
  'Tight as a drum': 'Sellado como un tambor',
  'A very small leak, says the controller. There is none, say smoke, gauge and four good technicians. Somebody is wrong, and you are going to find out who.':
    'Una fuga muy pequeña, dice el módulo de control. No hay ninguna, dicen el humo, el vacuómetro y cuatro buenos técnicos. Alguien se equivoca, y usted va a averiguar quién.',
  'Choose an instrument that can resolve what you want to know.':
    'Elegir un instrumento que pueda distinguir lo que usted quiere saber.',
  'Take a small reading slowly, and more than once.': 'Tomar una lectura pequeña despacio, y más de una vez.',
  'Ask what a monitor measures before you believe the name of its code.':
    'Preguntar qué mide un monitor antes de creer el nombre de su código.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [133 200 miles|214 350 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [133 200 millas|214 350 km]',
  'Lamp on, same code since February. The district has spent more on the search than a leak could cost. It wants either the cause or a letter that says there is none.':
    'Luz encendida, el mismo código desde febrero. El distrito ha gastado en la búsqueda más de lo que una fuga podría costar. Quiere la causa, o una carta que diga que no hay ninguna.',
  'February, filler cap and canister hose renewed on suspicion. The lamp came back after some [170 miles|270 km].':
    'Febrero, tapón de llenado y manguera del cánister renovados por sospecha. La luz volvió después de unas [170 millas|270 km].',
  'March, smoke test of the whole system, air hose plugged. No smoke anywhere, the flow ball sank to the bottom.':
    'Marzo, prueba de humo de todo el sistema, manguera de aire con tapón. Humo en ningún lado, la bolita de flujo bajó hasta el fondo.',
  'April, unit tested by hand pump. Holds [15 inHg|51 kPa], switch makes, switch lets go. Sheet says, "Unit good."':
    'Abril, unidad probada con bomba de vacío manual. Retiene [15 inHg|51 kPa], el interruptor cierra, el interruptor abre. La hoja dice: "Unidad buena."',
  'April, tank seal and canister renewed. The lamp came back after some [160 miles|260 km].':
    'Abril, sello del tanque y cánister renovados. La luz volvió después de unas [160 millas|260 km].',
  'May, controller reads the same sense voltage as the meter. Nothing to complain of.':
    'Mayo, el módulo de control lee el mismo voltaje de señal que el multímetro. Nada que reclamar.',
  'The vacuum switch closes where it should, near [10 inH2O|25 hPa], and opens again almost at the same point, where it should let the vacuum fall by more than [two inches of water|5 hPa] first. The monitor measures the time from the one point to the other. On a system as tight as any, that way is now so short that the ordinary seep of a sound truck walks it in half a minute, and the controller calls that a leak. No gauge for [30 inHg|100 kPa] can show it. The two points lie closer than the width of its needle. Through the jar, with quarter strokes and the bleed hardly open, the water column shows them one after the other. Everyone who said that there is no leak was right.':
    'El interruptor de vacío cierra donde debe, cerca de [10 inH2O|25 hPa], y abre otra vez casi en el mismo punto, cuando primero debería dejar bajar el vacío más de [dos pulgadas de agua|5 hPa]. El monitor mide el tiempo de un punto al otro. En un sistema tan sellado como el mejor, ese camino es ahora tan corto que la pérdida normal de un camión sano lo recorre en medio minuto, y el módulo de control llama fuga a eso. Ningún vacuómetro de [30 inHg|100 kPa] puede mostrarlo. Los dos puntos están más cerca que el ancho de su aguja. A través del frasco, con cuartos de carrera y el sangrado apenas abierto, la columna de agua los muestra uno tras otro. Todos los que dijeron que no hay fuga tenían razón.',
  'Another code this time': 'Esta vez, otro código',
  'In spring it was a small leak that nobody found, and then it went away. Now there is a circuit code. Mend it, prove it, and do not be surprised too early.':
    'En primavera fue una fuga pequeña que nadie halló, y luego se fue. Ahora hay un código de circuito. Repárelo, demuéstrelo, y no se sorprenda antes de tiempo.',
  'Measure a circuit in halves, each half by itself, before you blame either.':
    'Medir un circuito por mitades, cada una por separado, antes de culpar a alguna.',
  'Ask of every code what it keeps the controller from seeing.':
    'Preguntar de cada código qué le impide ver al módulo de control.',
  'Read pending codes after the drive, and finish the job that they begin.':
    'Leer los códigos pendientes después del viaje, y terminar el trabajo que ellos empiezan.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [128 300 miles|206 500 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [128 300 millas|206 500 km]',
  'Lamp on since the last days of October. Otherwise the truck is as it was. The district would like to see the lamp out for once and to have it stay out.':
    'Luz encendida desde los últimos días de octubre. Por lo demás, el camión está como estaba. El distrito quisiera ver la luz apagada por una vez, y que siga apagada.',
  'March, lamp on with P0442. Hoses and cap looked at, code cleared.':
    'Marzo, luz encendida con P0442. Mangueras y tapón revisados a la vista, código borrado.',
  'April and June, P0442 again. Cleared each time, nothing renewed.':
    'Abril y junio, P0442 otra vez. Borrado cada vez, nada renovado.',
  'September, no lamp, no code. "Cured itself", says the sheet.':
    'Septiembre, sin luz, sin código. "Se curó solo", dice la hoja.',
  'October, chassis washed from below before the winter check, lamp on three days later.':
    'Octubre, chasis lavado por abajo antes de la revisión de invierno, luz encendida tres días después.',
  'There are two faults, and one stands in front of the other. Moisture in the plug joins cavities 2 and 3 through some thousands of ohms, so that the sense circuit rests at 5 V, which is neither open nor closed. Parted, the plug still shows it on the harness half, and the unit by itself reads open. That convicts the plug. As long as that code stood, the monitor never came as far as a stroke, and the leak of spring could not be seen. It had not cured itself. With the plug renewed the monitor runs again and finds it on the first drive, and smoke shows the seal on the tank. Whoever closed the job at the first good reading sent the truck home with the code that it came with in March.':
    'Hay dos fallas, y una está delante de la otra. La humedad en el conector une las cavidades 2 y 3 a través de unos miles de ohmios, de modo que el circuito de señal reposa en 5 V, que no es ni abierto ni cerrado. Desconectado, el conector todavía lo muestra en la mitad del arnés, y la unidad sola se lee abierta. Eso señala el conector. Mientras ese código estuvo puesto, el monitor no llegó ni a una carrera, y la fuga de la primavera no se podía ver. No se había curado sola. Con el conector renovado el monitor corre otra vez y la encuentra en el primer viaje, y el humo muestra el sello del tanque. Quien cerró el trabajo con la primera lectura buena mandó el camión a casa con el código con que llegó en marzo.',
};
