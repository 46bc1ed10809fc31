import { entriesWhere } from '../setups.ts';
import { type MethodRule, unlessBroken } from './RuleFinding.ts';

/**
 * Codes and freeze data had been read, which writes them down, before anything cleared them: the reader's own "clear", or a
 * new controller, which knows nothing.
 */
export const codesRecordedFirst: MethodRule = ({ moments, log }) => {
  const cleared = moments.filter(
    ({ action }) =>
      action?.kind === 'clear-codes' || (action?.kind === 'renew' && action.item === 'controller'),
  );
  const read = log.find(({ about }) => about === 'codes');
  const blind = cleared.filter(({ tick }) => read === undefined || tick < read.tick);
  const finding = unlessBroken(
    cleared.map(({ tick }) => tick),
    blind.map(({ tick }) => tick),
  );
  if (finding.outcome !== 'kept') return finding;
  return { ...finding, entries: entriesWhere(log, ({ id }) => id === read?.id) };
};
