import type { Catalogue } from '../translate.ts';

/** What may be wrong with an item, in trade words, by item and mode of the fault catalogue. A verdict chooses among these. */
const WIRE = {
  open: 'abierto',
  resistance: 'demasiada resistencia',
  'to-ground': 'en corto a tierra',
  'to-battery': 'en corto al voltaje de batería',
  pierced: 'aislamiento perforado',
};

export const modes = {
  itemModes: {
    unit: {
      winding: 'devanado del solenoide: abierto, o vueltas en corto',
      plunger: 'émbolo del solenoide: pegado, o se pega a veces',
      'solenoid-valve': 'válvula del solenoide: no sella',
      'vacuum-switch': 'contacto del interruptor: pegado, demasiada resistencia, o falla a veces',
      'trip-point': 'puntos del interruptor: dispara con demasiado vacío, o regresa demasiado cerca',
      capsule: 'cápsula del interruptor: rota',
      diaphragm: 'diafragma de la bomba: roto',
      'return-spring': 'resorte de retorno del diafragma: roto',
      'vent-seat': 'asiento de ventilación: con fuga, o pegado cerrado o abierto',
      'vent-delay': 'retardo de ventilación: sangrado tapado, o su válvula de retención con fuga',
      'pump-checks': 'válvulas de retención de la bomba: la de entrada o la de salida tiene fuga',
      body: 'cuerpo: agrietado en un puerto',
      lever: 'palanca: se detiene antes del fin de su recorrido',
      'position-switch': 'interruptor de posición: pegado, demasiada resistencia, o falla a veces',
      adjustment: 'interruptor de posición: mal ajustado, cierra demasiado pronto',
    },
    'feed-wire': WIRE,
    'ground-wire': { open: WIRE.open, resistance: WIRE.resistance, pierced: WIRE.pierced },
    'sense-wire': WIRE,
    plug: { 'terminal-spread': 'un terminal abierto de más', moisture: 'humedad entre cavidades' },
    fuse: { melted: 'fundido' },
    'key-switch': { 'burnt-contacts': 'contactos quemados' },
    battery: { weak: 'débil' },
    controller: {
      driver: 'salida de alimentación: muerta, o pegada en encendido',
      'pull-up': 'pull-up del circuito de señal: perdido',
      'sense-input': 'entrada de señal: dañada',
    },
    'canister-hose': { split: 'rajada', off: 'fuera de su espiga' },
    'air-hose': { blocked: 'tapada' },
    'engine-hose': { leaking: 'tiene fuga', pinched: 'aplastada' },
    filter: { clogged: 'tapado de suciedad', water: 'agua adentro' },
    'filler-cap': { seal: 'no sella' },
    canister: {
      cracked: 'agrietado',
      'charcoal-out': 'se le sale el carbón',
      'fuel-soaked': 'empapado de combustible líquido',
    },
    'tank-seal': { leaking: 'tiene fuga' },
    'purge-valve': { passing: 'deja pasar aire cuando debería estar cerrada' },
    'meter-leads': { open: 'abiertos por dentro' },
    'meter-fuses': { melted: 'fundidos' },
    'meter-battery': { low: 'baja' },
    'hand-pump': { seal: 'el sello tiene fuga', gauge: 'la aguja del vacuómetro se pega' },
    jumper: { melted: 'su fusible fundido', 'burnt-contacts': 'contactos del interruptor quemados' },
    'plain-lead': { burnt: 'quemado' },
  },
} satisfies Pick<Catalogue, 'itemModes'>;
