import type { ItemId } from '../../sim/devices/items.ts';
import { eachStep, type SingleStep } from '../../sim/rigs/standardTests/eachStep.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { SET_UPS } from '../../sim/rigs/standardTests/setUps.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';

/** The test that tries each tool that may be bad as a job begins. */
export const PROOF_OF_TOOL: readonly { readonly item: ItemId; readonly proof: StandardTestId }[] = [
  { item: 'meter-leads', proof: 'meter-on-battery' },
  { item: 'meter-battery', proof: 'meter-on-battery' },
  { item: 'meter-fuses', proof: 'meter-current-fuse' },
  { item: 'hand-pump', proof: 'hand-pump-dead-end' },
  { item: 'jumper', proof: 'jumper-proof' },
];

/** Proofs of the tools that a test rests on, in the order in which a careful hand does them. */
export function proofsFor(test: StandardTest): readonly StandardTestId[] {
  const steps = eachStep([...SET_UPS[test.prepares], ...test.steps]);
  const proofs: StandardTestId[] = [];
  if (test.needs.includes('meter') || test.needs.includes('jumper')) proofs.push('meter-on-battery');
  if (steps.some(readsOhms)) proofs.push('meter-leads-together');
  if (steps.some((step) => step.kind === 'meter-jack' && step.jack === 'milliamps'))
    proofs.push('meter-current-fuse');
  if (test.needs.includes('hand-pump')) proofs.push('hand-pump-dead-end');
  if (test.needs.includes('jumper')) proofs.push('jumper-proof');
  return proofs.includes(test.id) ? proofs.slice(0, proofs.indexOf(test.id)) : proofs;
}

/** Few ohms are worth nothing before the leads' own are known. */
function readsOhms(step: SingleStep): boolean {
  return step.kind === 'set-meter' && (step.function === 'ohms' || step.function === 'continuity');
}

const TOOL_TESTS: ReadonlySet<StandardTestId> = new Set([
  'meter-on-battery',
  'meter-leads-together',
  'meter-current-fuse',
  'hand-pump-dead-end',
  'jumper-proof',
  'plain-lead-proof',
]);

/** Whether a test tries a tool by itself. */
export function triesTool(test: StandardTestId): boolean {
  return TOOL_TESTS.has(test);
}
