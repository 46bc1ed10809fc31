import { err, ok } from '../../../base/Result.ts';
import { driverTable } from '../../devices/modes/driver.ts';
import type { SolenoidCommand } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Asks the controller, through the reader, to drive the solenoid. A pulse begins with its on half. */
export function commandSolenoid({ bench }: ApplyContext, command: SolenoidCommand): Applied {
  if (bench.key === 'off') return err('reader-needs-key-on');
  if (bench.command === command) return err('already-so');
  bench.command = command;
  bench.pulseHigh = command === 'pulse';
  bench.driver = driverTable.next(bench.driver, command === 'off' ? 'COMMAND_OFF' : 'COMMAND_ON');
  return ok(undefined);
}
