import { describe, expect, it } from 'vitest';
import { RIG_IDS } from '../../src/sim/devices/BenchSurface.ts';
import { EVERY_RIG } from '../../src/sim/rigs/rigs.ts';
import { readKept, sourceFiles } from './support/repoFiles.ts';

/**
 * A rig is data and devices. What differs between rigs is asked of the rig, or looked up in a table that has a row for each:
 * outside a rig's own files nobody asks which one it is.
 */

/** Where a rig may be named: its own files, and tables with a row for every rig. */
const OWN_FILES = [/^src\/sim\/rigs\/(leakDetectionPump|flapActuator)\//, /^src\/text\/e[ns]\/rigs\//];
const TABLES = [
  'src/sim/devices/BenchSurface.ts',
  'src/sim/rigs/rigs.ts',
  'src/cli/keptTables.ts',
  'src/app/evidence/keptTables.ts',
  'src/ui/scene/views/unit.ts',
  'src/ui/inside/InsideView.tsx',
  'src/ui/panels/serviceOfRig.ts',
  'src/app/otherRigs.ts',
  'src/text/rigsEnglish.ts',
];
/** Sentences that name the rigs for authors. */
const SENTENCES = ['src/text/scenarioFields.ts', 'src/text/en/formFields.ts', 'src/text/es/formFields.ts'];

const sources = sourceFiles('src');
const naming = (path: string): readonly string[] =>
  RIG_IDS.filter((id) => readKept(path).includes(`'${id}'`));

describe('no special cases', () => {
  it('names a rig in its own files and in tables of all rigs only', () => {
    const elsewhere = sources.filter(
      (path) =>
        naming(path).length > 0 &&
        !OWN_FILES.some((own) => own.test(path)) &&
        ![...TABLES, ...SENTENCES].includes(path),
    );
    expect(elsewhere).toEqual([]);
  });

  it('never compares with a name of a rig, not even there', () => {
    const compared = sources.filter((path) =>
      RIG_IDS.some((id) => new RegExp(`[!=]==? *'${id}'|case '${id}'`).test(readKept(path))),
    );
    expect(compared).toEqual([]);
  });

  it('has a row for every rig in each table of sources', () => {
    const tables = TABLES.filter((path) => !/otherRigs|rigsEnglish/.test(path));
    for (const path of tables) expect(naming(path), path).toEqual([...RIG_IDS]);
  });

  it('takes no rig out of its definition', () => {
    expect(EVERY_RIG.map(({ id }) => id)).toEqual([...RIG_IDS]);
    for (const { id, surface } of EVERY_RIG) expect(surface.rig).toBe(id);
  });
});
