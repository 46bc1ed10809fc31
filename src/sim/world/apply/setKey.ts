import { err, ok } from '../../../base/Result.ts';
import { driverTable } from '../../devices/modes/driver.ts';
import type { KeyPosition } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Turns the key. Off lets the controller sleep: its command ends and a latched driver is freed. */
export function setKey({ bench, happen }: ApplyContext, position: KeyPosition): Applied {
  if (bench.key === position) return err('already-so');
  const wakes = bench.key === 'off';
  bench.key = position;
  if (position === 'off') {
    bench.command = 'off';
    bench.pulseHigh = false;
    bench.driver = driverTable.next(bench.driver, 'KEY_OFF');
  }
  if (wakes) happen('relay', 'dash');
  return ok(undefined);
}
