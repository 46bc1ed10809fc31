/** Jobs of the engine's vacuum: where it comes too slowly, and where it should not come at all. */
export const engineSide: Readonly<Record<string, string>> = {
  'The long hill': 'La cuesta larga',
  'The controller has seen the system drawn down faster than its pump can draw. That pump has been renewed already. Find out who else is pulling.':
    'El módulo de control vio que el sistema hacía vacío más rápido de lo que su bomba puede. Esa bomba ya se renovó. Averigüe quién más está jalando.',
  'Ask what else could have made a reading before you blame what should have made it.':
    'Preguntar qué más pudo dar una lectura antes de culpar a lo que debía darla.',
  'Get another instrument when the one in your hand does not come back to zero.':
    'Buscar otro instrumento cuando el que tiene en la mano no vuelve a cero.',
  'Part a system in two and judge each side alone.':
    'Partir un sistema en dos y juzgar cada lado por separado.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [109 300 miles|175 900 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [109 300 millas|175 900 km]',
  'Yellow lamp on for a month. It idles a little rough at the foot of the long hill to the upper tank, says the driver, and only when it is warm. The district has paid for one leak detection pump and will not pay for a second one.':
    'Luz amarilla encendida desde hace un mes. En ralentí va un poco dispareja en la parte baja de la cuesta larga al tanque de arriba, dice el conductor, y solo en caliente. El distrito ya pagó una bomba de detección de fugas y no va a pagar otra.',
  'July, leak detection pump renewed for this code. The lamp came back after some [120 miles|190 km].':
    'Julio, bomba de detección de fugas renovada por este código. La luz volvió después de unas [120 millas|190 km].',
  'July, spark plugs and idle speed looked at, nothing found.':
    'Julio, bujías y velocidad de ralentí revisadas, no se halló nada.',
  'August, new unit tried on this bench by hand pump. Sheet says, "Needle goes up in jumps and does not come back to zero. Second one bad as well?"':
    'Agosto, unidad nueva probada en este banco con bomba manual. La hoja dice: "La aguja sube a saltos y no vuelve a cero. ¿También mala la segunda?"',
  'Canister dry, hoses whole.': 'Cánister seco, mangueras enteras.',
  'The purge valve does not shut. With the engine running the manifold draws through it all the time, and so the system is down before the pump could have done it in so few strokes. Smoke into the canister hose, unit off, comes out at that valve, and nowhere else. The unit was good both times. What was said of it in August came from the gauge of this bench, which sticks. On its own closed hose it rises in jumps and stays hanging, with no unit near it. The rough idle may well belong to the same valve, for air that the manifold draws there was not asked for. It costs 65 dollars, and the road tells whether that was all.':
    'La válvula de purga no cierra. Con el motor en marcha, el múltiple jala por ella todo el tiempo, y así el sistema está en vacío antes de que la bomba pudiera hacerlo con tan pocas carreras. El humo en la manguera del cánister, con la unidad quitada, sale por esa válvula y por ningún otro lugar. La unidad era buena las dos veces. Lo que se dijo de ella en agosto venía del vacuómetro de este banco, que se pega. En su propia manguera cerrada sube a saltos y se queda colgado, sin ninguna unidad cerca. El ralentí disparejo bien puede ser de la misma válvula, pues nadie pidió el aire que el múltiple jala por ahí. Cuesta 65 dólares, y el camino dice si eso era todo.',
  'Since the brake job': 'Desde los frenos',
  'A large leak, says the code. No smoke comes out in any place, and every electrical reading is right. Then what keeps the system from being drawn down?':
    'Una fuga grande, dice el código. No sale humo en ningún lugar, y toda lectura eléctrica está bien. Entonces, ¿qué impide que el sistema haga vacío?',
  'Keep apart what a code is called and what the controller has measured.':
    'Distinguir cómo se llama un código de lo que midió el módulo de control.',
  'Measure a supply while something flows, not only while it stands.':
    'Medir un suministro mientras algo fluye, no solo mientras está quieto.',
  'Go through what a pump needs, one need after the other.':
    'Recorrer lo que una bomba necesita, una necesidad tras otra.',
  'Truck 14, petrol utility truck, Harrow Point Water District (invented), [117 600 miles|189 250 km]':
    'Camión 14, camión de servicio a gasolina, Harrow Point Water District (inventado), [117 600 millas|189 250 km]',
  'Yellow lamp on, a week after the brakes were done. The brakes are good now, says the driver. The district thinks that the one has nothing to do with the other, and wants to know what it is going to pay for.':
    'Luz amarilla encendida, una semana después de que se hicieron los frenos. Los frenos están bien ahora, dice el conductor. El distrito cree que lo uno no tiene que ver con lo otro, y quiere saber qué va a pagar.',
  'Last week, brake servo renewed. Air cleaner and its brackets were out for it.':
    'La semana pasada, servofreno renovado. Para eso se sacaron el filtro de aire del motor y sus soportes.',
  'Lamp on after some [90 miles|140 km].': 'Luz encendida después de unas [90 millas|140 km].',
  'Smoke test of the whole system by the second bay, air hose plugged. No smoke seen.':
    'Prueba de humo de todo el sistema por la segunda bahía, manguera de aire tapada. No se vio humo.',
  'Sense measured at the plug by the second bay, at rest and under the hand pump. Good.':
    'Señal medida en el conector por la segunda bahía, en reposo y con la bomba manual. Buena.',
  'Vacuum measured at the manifold. Good.': 'Vacío medido en el múltiple. Bueno.',
  'The vacuum hose between engine and unit is pinched. Every stroke of the pump is made by engine vacuum, and through that pinch it comes too slowly. So the pump makes short strokes, the system is not down within its time, and the controller calls that a large leak because it knows no other reason. Nothing leaks. With a gauge on its end and nothing flowing, such a hose shows all the vacuum that the engine has. Let air in through the release, and the needle falls away, where a free hose would hold it up. The hose costs fourteen dollars. Whoever takes brackets out looks at what lies under them when they go back.':
    'La manguera de vacío entre el motor y la unidad está aplastada. Cada carrera de la bomba la hace el vacío del motor, y por esa parte aplastada llega demasiado despacio. Así la bomba hace carreras cortas, el sistema no hace vacío a tiempo, y el módulo de control lo llama fuga grande porque no conoce otra razón. Nada fuga. Con un vacuómetro en su extremo y sin flujo, una manguera así muestra todo el vacío que tiene el motor. Deje entrar aire por la válvula de alivio, y la aguja se cae, donde una manguera libre la sostendría. La manguera cuesta catorce dólares. Quien saca soportes mira lo que queda debajo cuando los vuelve a poner.',
};
