/** Captions for what is heard or seen for a moment. */
export const happenings = {
  happenings: {
    'click-on': 'click',
    'click-off': 'click',
    tone: 'tone',
    hiss: 'hiss',
    spark: 'spark',
    'fuse-pop': 'pop',
    relay: 'tick',
    stroke: 'stroke',
    'barb-cracked': 'crack',
    'water-lost': 'gurgle',
    'smoke-seen': 'smoke',
    'crack-heard': 'crack',
    'lead-burnt': 'burnt',
  },
  happeningSentences: {
    'click-on': 'Click from the unit: the plunger drew in.',
    'click-off': 'Click from the unit: the plunger dropped back.',
    tone: 'Continuity tone.',
    hiss: 'Hiss of air.',
    spark: 'A spark where the circuit was opened.',
    'fuse-pop': 'A fuse melted.',
    relay: 'A tick from under the dash.',
    'barb-cracked': 'The barb cracked: the clamp was too tight.',
    'water-lost': 'The water was drawn out of the manometer.',
    'smoke-seen': 'Smoke comes out somewhere.',
    'crack-heard': 'Something gave way with a crack.',
    'lead-burnt': 'A lead smokes, and its insulation is burnt.',
  },
  /** With the place, where it could be told. */
  happeningAt: {
    truckFuse: 'The fuse of the truck melted.',
    jumperFuse: 'The fuse of the jumper melted.',
    meterFuse: 'A fuse inside the meter melted.',
    barb: 'The barb of the {{port}} cracked: the clamp was too tight.',
  },
} as const;
