import type { DriveCycle } from '../../sim/world/Observation.ts';

interface HoldBarProps {
  readonly seconds: number;
  readonly limits: NonNullable<DriveCycle['limits']>;
}

const WIDTH = 110;
/** The scale ends beyond the passing limit, so that a pass is seen to be one. */
const BEYOND = 1.5;

/** The hold as a bar over a line with two marks: where a small leak ends, and where a pass begins. The words stand beside it. */
export function HoldBar({ seconds, limits }: HoldBarProps) {
  const x = (time: number): number => Math.min(1, time / (limits.passSeconds * BEYOND)) * (WIDTH - 2) + 1;
  return (
    <svg class="hold-bar" width={WIDTH} height={16} viewBox={`0 0 ${WIDTH} 16`} aria-hidden="true">
      <path d={`M1 8 H${WIDTH - 1}`} />
      <path class="held" d={`M1 8 H${x(seconds)}`} />
      <path d={`M${x(limits.smallSeconds)} 2 V14 M${x(limits.passSeconds)} 0 V16`} />
    </svg>
  );
}
