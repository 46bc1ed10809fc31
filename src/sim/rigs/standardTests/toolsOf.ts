import { type ItemId, TEST_TOOLS, type TestTool } from '../../devices/items.ts';
import type { Fitting, LeadEnd } from '../../devices/places.ts';
import type { SingleStep } from './eachStep.ts';

/** The tools that steps take into the hand, in the order of the list. */
export function toolsOf(steps: readonly SingleStep[]): readonly TestTool[] {
  const taken = new Set(steps.flatMap(toolsOfStep));
  return TEST_TOOLS.filter((tool) => taken.has(tool));
}

/** The tool that an item of the bench is, or belongs to. */
export const TOOL_OF_ITEM: Readonly<Partial<Record<ItemId, TestTool>>> = {
  'hand-pump': 'hand-pump',
  'meter-leads': 'meter',
  'meter-fuses': 'meter',
  'meter-battery': 'meter',
  jumper: 'jumper',
  'plain-lead': 'plain-lead',
};

/** The tool that each lead end belongs to. */
export const TOOL_OF_LEAD: Readonly<Record<LeadEnd, TestTool>> = {
  'meter-red': 'meter',
  'meter-black': 'meter',
  'jumper-supply': 'jumper',
  'jumper-far': 'jumper',
  'plain-a': 'plain-lead',
  'plain-b': 'plain-lead',
  'lamp-clip': 'test-lamp',
  'lamp-tip': 'test-lamp',
  'led-clip': 'led-tester',
  'led-tip': 'led-tester',
};

/** The tools that each thing to fit belongs to; none where it is the truck's own. */
export const TOOLS_OF_FITTING: Readonly<Record<Fitting, readonly TestTool[]>> = {
  'canister-hose': [],
  'air-hose': [],
  'engine-hose': [],
  'pump-hose': ['hand-pump'],
  'jar-hose': ['jar'],
  'manometer-hose': ['manometer'],
  'smoke-hose': ['smoke-machine'],
  'cap-a': ['caps-and-plugs'],
  'cap-b': ['caps-and-plugs'],
  'cap-c': ['caps-and-plugs'],
  'plug-a': ['caps-and-plugs'],
  'plug-b': ['caps-and-plugs'],
  'plug-c': ['caps-and-plugs'],
};

function toolsOfStep(step: SingleStep): readonly TestTool[] {
  switch (step.kind) {
    case 'place-lead': {
      const bench = step.point.startsWith('supply-') ? (['bench-supply'] as const) : [];
      return [TOOL_OF_LEAD[step.end], ...bench];
    }
    case 'insert-pin':
      return ['back-probe-pins'];
    case 'drag-test':
      return ['drag-gauge'];
    case 'fit':
      return TOOLS_OF_FITTING[step.item];
    case 'stroke':
      return ['hand-pump'];
    case 'stroke-until':
      return step.goal.kind === 'sense-is' ? ['hand-pump', 'reader'] : ['hand-pump'];
    case 'set-meter':
      return ['meter'];
    case 'set-smoke':
      return ['smoke-machine'];
    case 'command-solenoid':
      return ['reader'];
    case 'wait-until':
      return step.goal.kind === 'sense-is' ? ['reader'] : [];
    case 'read':
      return READ_WITH.test(step.reading.of) ? ['reader'] : [];
    default:
      return [];
  }
}

const READ_WITH = /^(reader-|codes$|freeze-data$)/;
