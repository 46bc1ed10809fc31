import { SMOKE_GASES } from '../../../../sim/devices/places.ts';
import type { Observation } from '../../../../sim/world/Observation.ts';
import { JUMPER_FUSE_OFFSET, JUMPER_ON_MAT, JUMPER_SWITCH_OFFSET } from '../benchPlan.ts';
import { type Box, boxAround, type Vec } from '../geometry.ts';
import { jumperInUse } from '../leadEnds.ts';
import type { PlacedHotspot } from '../PlacedHotspot.ts';
import {
  BLEED_LESS,
  BLEED_MORE,
  DRAG_GAUGE,
  EAR,
  EYE,
  GAS_BOXES,
  JUMPER_ON_SHELF,
  PIN_TRAY,
  READER,
  REFILL,
  REGULATOR_LESS,
  REGULATOR_MORE,
  SHELF_TABS,
  type ShelfTab,
  SMOKE_GAUGE,
  SMOKE_GAUGE_RADIUS,
  TAB_BOXES,
  TUBE_READ,
} from '../shelfPlan.ts';
import { spot } from './spot.ts';

/** Middle of the jumper's body: on the shelf, or on the mat while an end of it is in use. */
export function jumperBodyAt(observation: Observation): Vec {
  return jumperInUse(observation) ? JUMPER_ON_MAT : JUMPER_ON_SHELF;
}

/** The tabs, and what stands in each compartment; only the open one's can be touched. */
export function shelfSpots(observation: Observation, shelf: ShelfTab): readonly PlacedHotspot[] {
  const jumper = jumperBodyAt(observation);
  const jumperShown = shelf === 'leads' || jumperInUse(observation);
  const onJumper = (offset: number): Box => boxAround({ x: jumper.x + offset, y: jumper.y }, 58, 40);
  const step = (at: Vec): Box => boxAround(at, 38, 36);
  const [air, smoke, hands] = [shelf === 'air', shelf === 'smoke', shelf === 'hands'];
  const waterLost = observation.manometer.kPa === null;
  return [
    ...SHELF_TABS.map((tab) => spot(`shelf:${tab}`, 'shelf', TAB_BOXES[tab])),
    spot('pin-tray', 'tools', PIN_TRAY, shelf === 'leads'),
    spot('jumper-switch', 'tools', onJumper(JUMPER_SWITCH_OFFSET), jumperShown),
    spot('jumper-fuse', 'tools', onJumper(JUMPER_FUSE_OFFSET), jumperShown),
    spot('manometer', 'tools', TUBE_READ, air),
    spot('refill', 'tools', boxAround(REFILL, 50, 42), air && waterLost),
    spot('bleed-less', 'tools', step(BLEED_LESS), air),
    spot('bleed-more', 'tools', step(BLEED_MORE), air),
    ...SMOKE_GASES.map((gas) => spot(`smoke-gas:${gas}`, 'tools', GAS_BOXES[gas], smoke)),
    spot('smoke-less', 'tools', step(REGULATOR_LESS), smoke),
    spot('smoke-more', 'tools', step(REGULATOR_MORE), smoke),
    spot('smoke-gauge', 'tools', boxAround(SMOKE_GAUGE, SMOKE_GAUGE_RADIUS * 2), smoke),
    spot('eye', 'tools', EYE, hands),
    spot('ear', 'tools', EAR, hands),
    spot('drag-gauge', 'tools', DRAG_GAUGE, hands),
    spot('reader', 'tools', READER),
  ];
}
