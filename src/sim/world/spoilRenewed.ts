import { faultById } from '../faults/catalogue.ts';
import { timesRenewed } from '../rigs/rigParameters.ts';
import type { Rig } from './Rig.ts';

/** Drive cycles a new part lasts while the root cause behind the old one's failure is still there. */
const DRIVES_TO_SPOIL = 2;

/** A drive has ended: where a part was renewed and its root cause was not, the new part is nearer to failing the same way. */
export function spoilRenewed(rig: Rig): void {
  const { spec, state } = rig;
  const { bench } = state;
  const rooted = spec.faults.filter(({ root }) => root !== undefined);
  for (const [i, { fault, severity, root }] of rooted.entries()) {
    const item = faultById(fault)?.item;
    const rootItem = root === undefined ? undefined : faultById(root)?.item;
    if (item === undefined || rootItem === undefined) continue;
    const fitted = item === 'unit' ? bench.unit : 'truck';
    const madeGood = bench.renewed.includes(item) || fitted === 'known-good';
    const since = `${fitted}/${timesRenewed(bench.renewed, item)}`;
    const was = state.spoiling[i];
    const drives = was?.since === since ? was.drives : 0;
    const spoils = madeGood && !bench.renewed.includes(rootItem);
    state.spoiling[i] = { since, drives: spoils ? drives + 1 : 0 };
    if (state.spoiling[i]?.drives === DRIVES_TO_SPOIL) rig.damage(fault, severity);
  }
}
