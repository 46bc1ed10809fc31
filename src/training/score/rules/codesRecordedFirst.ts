import { entriesWhere } from '../setups.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/**
 * Codes and freeze data had been read, which writes them down, before anything cleared them: the reader's own "clear", or a
 * new controller, which knows nothing. Reading them before the verdict keeps the rule, whether or not anything is cleared.
 */
export const codesRecordedFirst: MethodRule = ({ moments, log, verdict }) => {
  const cleared = moments.filter(
    ({ action }) =>
      action?.kind === 'clear-codes' || (action?.kind === 'renew' && action.item === 'controller'),
  );
  const read = log.find(({ about }) => about === 'codes');
  const blind = cleared.filter(({ tick }) => read === undefined || tick < read.tick);
  if (blind.length > 0) return missed(blind.map(({ tick }) => tick));
  const inTime = read !== undefined && (cleared.length > 0 || read.tick <= verdict.tick);
  if (!inTime) return NO_OCCASION;
  return kept(
    [read.tick],
    entriesWhere(log, ({ id }) => id === read.id),
  );
};
