import { TOOL_ITEMS } from '../../../sim/devices/items.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/**
 * After the last drive the codes were read: what failed once on it stands there as pending, and no lamp tells of it. The occasion
 * is a drive, or a part of the truck that was renewed and would want one.
 */
export const pendingCodesRead: MethodRule = ({ moments, log }) => {
  const drive = moments.filter(({ action }) => action?.kind === 'road-test').at(-1);
  if (drive === undefined) {
    const renewed = moments.some(
      ({ action }) => action?.kind === 'renew' && !TOOL_ITEMS.includes(action.item),
    );
    return renewed ? missed() : NO_OCCASION;
  }
  const read = log.find(({ tick, about }) => about === 'codes' && tick >= drive.tick);
  return read === undefined ? missed([drive.tick]) : kept([read.tick], [read.id]);
};
