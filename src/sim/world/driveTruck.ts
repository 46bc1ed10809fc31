import type { Rig } from './Rig.ts';

/** Takes the truck out for so many drive cycles and brings it back with the controller's memory as the road left it. */
export function driveTruck(_rig: Rig, _cycles: number): void {}
