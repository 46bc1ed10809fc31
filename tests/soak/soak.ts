import { fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { type SoakResult, soakRun } from './soakRun.ts';

/** Random hands for a long time: `npm run soak -- [actions] [first seed number]`. Prints every seed that failed. */

const ACTIONS_A_SEED = 1000;

interface Share {
  readonly from: number;
  readonly step: number;
  readonly until: number;
}

function work({ from, step, until }: Share): void {
  for (let n = from; n < until; n += step) {
    process.send?.(soakRun(`hands ${n}`, ACTIONS_A_SEED));
  }
}

async function lead(): Promise<void> {
  const total = Number(process.argv[2] ?? 1_000_000);
  const first = Number(process.argv[3] ?? 0);
  const seeds = Math.ceil(total / ACTIONS_A_SEED);
  const workers = Math.max(Math.min(availableParallelism(), seeds), 1);
  const results: SoakResult[] = [];
  const began = performance.now();
  await Promise.all(
    Array.from({ length: workers }, (_, i) => {
      const share: Share = { from: first + i, step: workers, until: first + seeds };
      const worker = fork(fileURLToPath(import.meta.url), ['--share', JSON.stringify(share)]);
      worker.on('message', (result: SoakResult) => {
        results.push(result);
        if (result.trouble !== null) process.stdout.write(`${result.seed}: ${result.trouble}\n`);
        if (results.length % 100 === 0) process.stdout.write(`${results.length} of ${seeds} seeds\n`);
      });
      return new Promise<void>((resolve, reject) => {
        worker.once('error', reject);
        worker.once('exit', () => resolve());
      });
    }),
  );
  const failed = results.filter((result) => result.trouble !== null).length;
  const done = results.reduce((sum, result) => sum + result.done, 0);
  const worst = results.reduce((most, result) => Math.max(most, result.worstAmps), 0);
  const seconds = Math.round((performance.now() - began) / 1000);
  process.stdout.write(
    `${results.length * ACTIONS_A_SEED} actions (${done} done, the rest refused) under seeds "hands ${first}" to ` +
      `"hands ${first + seeds - 1}" in ${seconds} s: ${failed} seeds failed, worst Kirchhoff residual ${worst.toExponential(1)} A\n`,
  );
  process.exitCode = failed === 0 && results.length === seeds ? 0 : 1;
}

if (process.argv[2] === '--share') work(JSON.parse(process.argv[3] ?? '') as Share);
else await lead();
