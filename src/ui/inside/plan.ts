/** Where things stand in the cut-away, in its own units. Drawn from function: what joins what, in the order air takes. */
export const PLAN = {
  width: 840,
  height: 500,
  casing: { x: 44, y: 104, width: 752, height: 376 },
  /** Tops and bottoms of the two passages. */
  canister: { top: 412, bottom: 462, left: 44, right: 612 },
  air: { top: 352, bottom: 400, left: 388, right: 796 },
  pump: { left: 206, right: 436, top: 134, rim: 226, floor: 302 },
  /** Duct from the drive chamber to the solenoid valve. */
  duct: { top: 134, bottom: 168, right: 752 },
  delay: { left: 504, right: 606, top: 238, floor: 316 },
  vent: { x: 555, half: 22 },
  valve: { x: 700, half: 13 },
  capsule: { x: 138, half: 52, rim: 362 },
} as const;

/** Shares of their travel at which parts stand, 0 at rest to 1. */
export const PLUNGER_STANDS = { rest: 0, 'moving-in': 0.5, seated: 1, 'moving-out': 0.5 } as const;

/** Lift of the pump's plate, and travels of plunger, vent disc and capsule, in units of the drawing. */
export const TRAVEL = { pump: 88, plunger: 22, vent: 16, capsule: 14 } as const;

/** A coil spring seen from the side between two heights, as the points of a line. */
export function springPoints(x: number, top: number, bottom: number, half: number, turns: number): string {
  const points: string[] = [`${x},${top}`];
  for (let i = 0; i < turns * 2; i++) {
    const y = top + ((bottom - top) * (i + 0.5)) / (turns * 2);
    points.push(`${i % 2 === 0 ? x - half : x + half},${y.toFixed(1)}`);
  }
  return [...points, `${x},${bottom}`].join(' ');
}
