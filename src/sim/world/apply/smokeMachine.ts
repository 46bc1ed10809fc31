import { err } from '../../../base/Result.ts';
import type { SmokeGas } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Sets the smoke machine's gas and the pressure of its regulator, pascal above the room. */
export function setSmoke(_context: ApplyContext, _gas: SmokeGas, _pa: number): Applied {
  return err('cannot-be-reached');
}
