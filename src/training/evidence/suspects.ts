import { type ItemId, TOOL_ITEMS } from '../../sim/devices/items.ts';
import { FAULTS } from '../../sim/faults/catalogue.ts';
import { type FaultEntry, triedBy } from '../../sim/faults/Fault.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import { rigNamed } from '../../sim/rigs/rigs.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { Faces, Suspect } from './Suspect.ts';

/** Name of the suspect, and of its item, where nothing is wrong. */
export const NOTHING_WRONG = 'nothing-wrong';
/** A job where nothing is wrong is about as common as one likely fault. Invented for teaching. */
const NOTHING_WEIGHT = 6;
/** How much less likely two faults together are than their chances one by one would make them. */
const PAIR_FACTOR = 1;
const LIKELIEST_ITEMS = 10;
/** Share of a wire's faults that show only while the harness is moved, and the chance that a movement shows one. */
const MOVED_SHARE = 0.2;
const MOVED_CHANCE = 0.5;

/**
 * Degrees taken of a fault, as shares of its range, evenly from the mildest to the worst. Where the range is wide, more of
 * them. The two ends stand for half as much of the range as the others.
 */
function degreesOf({ severity, intermittent }: FaultEntry): readonly number[] {
  if (severity === null) return [1];
  const wide = Math.max(severity.worst / severity.mildest, severity.mildest / severity.worst);
  if (wide > 12) return [0, 1 / 3, 2 / 3, 1];
  if (wide > 2.5 || intermittent === 'each-trial') return [0, 0.5, 1];
  return [0, 1];
}

/** Share of the fault's weight that each degree stands for. */
function shareOf(level: number, levels: number): number {
  if (levels === 1) return 1;
  return (level === 0 || level === levels - 1 ? 0.5 : 1) / (levels - 1);
}

/** A share of the range as a name has it. */
const inName = (severity: number): string => String(Math.floor(severity * 100 + 0.5) / 100);

const isTool = ({ item }: FaultEntry): boolean => TOOL_ITEMS.includes(item);

/** Faults of the truck that a job on this rig may begin with. */
function truckFaults(rig: RigDefinition): readonly FaultEntry[] {
  return rig.faults.filter((fault) => fault.weight > 0 && !isTool(fault));
}
/** Faults of the bench's tools likewise: the same at every rig. */
export const TOOL_FAULTS_THAT_MAY_BE: readonly FaultEntry[] = FAULTS.filter(
  (fault) => fault.weight > 0 && isTool(fault),
);

/** Every suspect of this version of a rig. Weights are relative. */
export function suspects(rig: RigDefinition = rigNamed()): readonly Suspect[] {
  const faults = truckFaults(rig);
  return [nothingWrong(), ...faults.flatMap(ofFault), ...faults.flatMap(whenMoved), ...commonPairs(faults)];
}

function nothingWrong(): Suspect {
  return {
    id: NOTHING_WRONG,
    faults: [],
    items: [],
    modes: [],
    item: NOTHING_WRONG,
    modeGroup: NOTHING_WRONG,
    weight: NOTHING_WEIGHT,
    family: NOTHING_WRONG,
    level: 0,
    faces: null,
  };
}

function ofFault(fault: FaultEntry): readonly Suspect[] {
  const degrees = degreesOf(fault);
  const alwaysShare = fault.intermittent === 'when-moved' ? 1 - MOVED_SHARE : 1;
  return degrees.map((severity, level) => ({
    id: degrees.length > 1 ? `${fault.id}/${inName(severity)}` : fault.id,
    faults: [{ fault: fault.id, severity }],
    items: [fault.item],
    modes: [`${fault.item}/${fault.mode}`],
    item: fault.item,
    modeGroup: `${fault.item}/${fault.mode}`,
    weight: fault.weight * alwaysShare * shareOf(level, degrees.length),
    family: fault.id,
    level,
    faces: fault.intermittent === 'each-trial' ? byChance(fault, severity) : null,
  }));
}

/** A fault by chance at each trial stands between two worlds: the chance at nought, and the chance at one. */
function byChance(fault: FaultEntry, severity: number): Faces | null {
  if (fault.severity === null) return null;
  const { mildest, worst } = fault.severity;
  const certain = (1 - mildest) / (worst - mildest);
  return {
    chance: mildest + severity * (worst - mildest),
    trialOf: triedBy(fault),
    good: [],
    bad: [{ fault: fault.id, severity: certain }],
  };
}

/** The same fault of a wire, but showing only while the harness is moved. */
function whenMoved(fault: FaultEntry): readonly Suspect[] {
  if (fault.intermittent !== 'when-moved') return [];
  const choice: FaultChoice = { fault: fault.id, severity: 0.6 };
  return [
    {
      id: `${fault.id}/moved`,
      faults: [{ ...choice, whenMoved: true }],
      items: [fault.item],
      modes: [`${fault.item}/${fault.mode}`],
      item: fault.item,
      modeGroup: `${fault.item}/${fault.mode}`,
      weight: fault.weight * MOVED_SHARE,
      family: `${fault.id}/moved`,
      level: 0,
      faces: { chance: MOVED_CHANCE, trialOf: 'moved', good: [], bad: [choice] },
    },
  ];
}

/** The likeliest fault of each two of the ten likeliest items. */
function commonPairs(faults: readonly FaultEntry[]): readonly Suspect[] {
  const byItem = new Map<ItemId, { readonly likeliest: FaultEntry; readonly weight: number }>();
  for (const fault of faults) {
    const before = byItem.get(fault.item);
    const likelier = before === undefined || fault.weight > before.likeliest.weight;
    byItem.set(fault.item, {
      likeliest: likelier ? fault : before.likeliest,
      weight: (before?.weight ?? 0) + fault.weight,
    });
  }
  const total = faults.reduce((sum, { weight }) => sum + weight, 0);
  const likeliest = [...byItem.values()].sort((a, b) => b.weight - a.weight).slice(0, LIKELIEST_ITEMS);
  return likeliest.flatMap((a, i) =>
    likeliest.slice(i + 1).map((b) => {
      const [one, two] = [a.likeliest, b.likeliest];
      return {
        id: `${one.id}+${two.id}`,
        faults: [one, two].map(({ id }) => ({ fault: id, severity: 0.6 })),
        items: [one.item, two.item],
        modes: [`${one.item}/${one.mode}`, `${two.item}/${two.mode}`],
        item: `${one.item}+${two.item}`,
        modeGroup: `${one.item}/${one.mode}+${two.item}/${two.mode}`,
        weight: (PAIR_FACTOR * one.weight * two.weight) / total,
        family: `${one.id}+${two.id}`,
        level: 0,
        faces: null,
      };
    }),
  );
}
