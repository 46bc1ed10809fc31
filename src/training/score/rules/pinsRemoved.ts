import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** Every pin that went in is out again when the job is closed. */
export const pinsRemoved: MethodRule = ({ moments, end }) => {
  const inserted = moments.filter(({ action }) => action?.kind === 'insert-pin').map(({ tick }) => tick);
  if (inserted.length === 0) return NO_OCCASION;
  if (end.plug.pins.some((pin) => pin)) return missed(inserted);
  return kept(moments.filter(({ action }) => action?.kind === 'remove-pin').map(({ tick }) => tick));
};
