import type { ItemId } from '../../sim/devices/items.ts';
import { TOOL_OF_ITEM } from '../../sim/rigs/standardTests/toolsOf.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { DRAW_SEEDS } from '../evidence/environment.ts';
import { outcomesOf } from '../evidence/OutcomeTable.ts';
import type { Shown } from '../evidence/Shown.ts';
import { type ForetoldTest, foretoldTest, shownMarks, testLikelihood } from '../evidence/testLikelihood.ts';
import type { ToolState } from '../evidence/toolStates.ts';

/** Degrees of a tool's fault: the one that stands for it, and those beside it. */
const DEGREES = [0.5, 0, 1] as const;

/** What a bad tool makes of a test on a sound truck. */
interface BadTool {
  /** Read marks that it changes. */
  readonly changed: ReadonlySet<string>;
  readonly foretold: ForetoldTest;
  readonly beside: readonly ForetoldTest[];
}

/**
 * What standard tests show where a tool is bad. The printed tables have sound tools only; a bad one is tried on a sound truck,
 * and whatever mark reads otherwise there is taken to show the tool and not the truck. Every other mark shows the truck as
 * before. That is nearly so: a tool's faults are read-out faults, and they outweigh what stands behind them.
 */
export class ToolFactor {
  private readonly known = new Map<string, BadTool>();
  private readonly sound: number;

  constructor(private readonly tables: EvidenceTables) {
    this.sound = tables.suspects.findIndex(({ items }) => items.length === 0);
  }

  /** Likelihood under each suspect of what a test showed, where the tools are so. `test` is its number in the table. */
  likelihoods(test: number, shown: readonly Shown[], state: ToolState): readonly number[] {
    const bad = this.badTool(test, state);
    if (bad === null || bad.changed.size === 0) return this.tables.evidence.likelihoods(test, shown);
    const ofTool = shown.filter((one) => bad.changed.has(markOf(one)));
    const ofTruck = shown.filter((one) => !bad.changed.has(markOf(one)));
    const factor = testLikelihood(shownMarks(ofTool), bad.foretold, bad.beside);
    return this.tables.evidence.likelihoods(test, ofTruck).map((one) => one * factor);
  }

  /** Whether a test's reading hangs on a tool. */
  bears(test: number, { item, bad }: ToolState): boolean {
    if (bad === null || item === null) return false;
    const tool = TOOL_OF_ITEM[item as ItemId];
    return tool !== undefined && (this.tables.tests[test]?.needs.includes(tool) ?? false);
  }

  private badTool(test: number, state: ToolState): BadTool | null {
    const { bad } = state;
    const standard = this.tables.tests[test];
    if (bad === null || standard === undefined || !this.bears(test, state)) return null;
    const key = `${test} ${bad.fault}`;
    let known = this.known.get(key);
    if (known === undefined) {
      const seed = DRAW_SEEDS[0] as string;
      const [own, ...others] = DEGREES.map((severity) =>
        outcomesOf(standard, [{ ...bad, severity }], seed, this.tables.environment),
      );
      const sound = this.tables.evidence.table.outcomes[test]?.[this.sound]?.[0] ?? [];
      known = {
        changed: changedMarks(sound, own ?? []),
        foretold: foretoldTest([own ?? []]),
        beside: others.map((shown) => foretoldTest([shown])),
      };
      this.known.set(key, known);
    }
    return known;
  }
}

const markOf = ({ channel, setUp }: Shown): string => `${channel} ${setUp}`;

/** Numbers nearer than this share, or than half the instrument's width, are the same. */
const SAME_SHARE = 0.01;

function changedMarks(sound: readonly Shown[], bad: readonly Shown[]): ReadonlySet<string> {
  return new Set(bad.filter((one, i) => !isSame(sound[i], one)).map(markOf));
}

function isSame(a: Shown | undefined, b: Shown): boolean {
  if (a === undefined || markOf(a) !== markOf(b)) return false;
  if (b.kind !== 'number' || typeof a.value !== 'number' || typeof b.value !== 'number')
    return a.value === b.value;
  return Math.abs(a.value - b.value) <= Math.max(b.half / 2, SAME_SHARE * Math.abs(b.value));
}
