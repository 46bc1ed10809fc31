import type { TestTool } from '../../sim/devices/items.ts';
import { EVERY_RIG } from '../../sim/rigs/rigs.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { RuleId } from './ruleIds.ts';

/** Tests that put a tool to use. */
function testsWith(tool: TestTool): readonly StandardTestId[] {
  return EVERY_RIG.flatMap(({ tests }) => tests)
    .filter(({ needs }) => needs.includes(tool))
    .map(({ id }) => id);
}

/**
 * Duties that a plan asks for, by its tests: whoever leaves such a test out has missed its rule. All other rules wait
 * for their occasion in the sitting.
 */
export const CALLED_FOR: Readonly<Partial<Record<RuleId, readonly StandardTestId[]>>> = {
  'meter-proven': testsWith('meter'),
  'pump-proven': testsWith('hand-pump'),
  'supply-and-ground-loaded': [
    'sense-with-solenoid-on',
    'ground-drop',
    'feed-drop',
    'feed-wire-drop',
    'fused-supply-drop',
    'controller-feed-on',
  ],
  'codes-recorded-first': ['codes-and-freeze-data'],
  'click-three-times': [
    'command-clicks',
    'jumper-clicks',
    'stroke-jar',
    'draw-whole-system',
    'draw-canister-hose-plugged',
    'run-and-return',
  ],
  'vacuum-three-times': ['vacuum-and-sense'],
  'return-observed': ['vacuum-and-sense', 'trip-and-reset', 'travel-vacuum'],
  'hold-watched': ['hold-capped'],
};
