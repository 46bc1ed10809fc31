import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type ProofNews, proofSteps } from '../../../src/app/backroom/proof/proofSteps.ts';
import { workCheck } from '../../../src/cli/checkShare.ts';
import { keptTables } from '../../../src/cli/keptTables.ts';
import type { RigId } from '../../../src/sim/devices/BenchSurface.ts';
import type { EvidenceTables } from '../../../src/training/evidence/EvidenceTables.ts';

const tables = async (rig: RigId | undefined): Promise<EvidenceTables> => {
  const kept = keptTables(rig);
  if (!kept.ok) throw new Error(kept.error);
  return kept.value;
};

async function told(text: string, from = tables): Promise<readonly ProofNews[]> {
  const news: ProofNews[] = [];
  for await (const one of proofSteps({ text, file: 'draft.yaml' }, from)) news.push(one);
  return news;
}

describe('a draft proved in the browser', () => {
  it.each(['silent-on-command', 'nothing-on-file'])(
    '%s comes to what check says of its file, to the last digit',
    async (id) => {
      const file = `scenarios/${id}.yaml`;
      const last = (await told(readFileSync(file, 'utf8'))).at(-1);
      const checked = workCheck({ file, seeds: 1 });
      if (last?.kind !== 'proved' || checked.kind !== 'proved') throw new Error('came to no end');
      expect(last.proof).toEqual(checked.proof);
      expect(last.proof.learners.length).toBe(6);
    },
  );

  it('is told of what is wrong with the file before any tables are asked for', async () => {
    const never = (): Promise<EvidenceTables> => Promise.reject(new Error('asked for tables'));
    const broken = await told('format: 1\nid: half\n', never);
    expect(broken.length).toBe(1);
    expect(broken[0]).toMatchObject({ kind: 'broken' });
    const problems = broken[0]?.kind === 'broken' ? broken[0].problems : [];
    expect(problems.map(({ path }) => path)).toContain('title');
    const introduction = readFileSync('scenarios/first-minutes.yaml', 'utf8');
    expect(await told(introduction, never)).toEqual([{ kind: 'nothing-to-prove' }]);
  });
});
