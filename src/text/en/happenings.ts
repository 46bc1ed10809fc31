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
    'barb-cracked': 'crack',
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
  },
} as const;
