import type { Catalogue } from '../translate.ts';

/** Debrief: the sitting seen again, moment by moment. */
export const debriefReplay = {
  replay: {
    title: 'El trabajo otra vez, por dentro',
    lead: 'Vaya a cualquier momento. La unidad se ve cortada como estaba, junto a lo que decían sus instrumentos.',
    working: 'Repitiendo el trabajo …',
    failed:
      'La repetición no se puede mostrar aquí ({{detail}}). La gráfica y el registro cuentan el mismo trabajo.',
    slider: 'Momento del trabajo',
    moment: '{{time}} de {{end}}',
    momentAfter: '{{time}}, después de: {{action}}',
    momentBefore: '{{time}}, antes de la primera acción',
    play: 'Reproducir',
    pause: 'Pausa',
    speed: 'Velocidad',
    speedOf: '{{speed}} ×',
    previous: 'Acción anterior',
    next: 'Acción siguiente',
    keys: 'Las flechas mueven un segundo; con Shift, una décima. Re Pág y Av Pág van a la acción anterior y a la siguiente.',
    lastAction: 'Última acción',
    lastEntry: 'Última anotación',
    none: 'todavía ninguna',
    instruments: 'Sus instrumentos',
    meter: 'Multímetro',
    meterBetween: '{{reading}}, {{stands}}',
    gauge: 'Vacuómetro',
    manometer: 'Manómetro',
    key: 'Llave',
    plug: 'Conector',
    command: 'Comando al solenoide',
    reader: 'El lector dice',
    plugMated: 'conectado',
    plugParted: 'desconectado',
    seeEntry: 'Verla otra vez',
    seeEntryName: 'Verla otra vez, por dentro: anotación {{id}}',
  },
} satisfies Pick<Catalogue, 'replay'>;
