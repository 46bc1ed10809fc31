import { BENCH_TOOLS, type BenchTool } from '../../sim/devices/items.ts';
import type { AirSite, LeadPoint } from '../../sim/devices/places.ts';
import { TOOL_OF_ITEM, TOOL_OF_LEAD, TOOLS_OF_FITTING } from '../../sim/rigs/standardTests/toolsOf.ts';
import type { Action } from '../../sim/world/Action.ts';

/** The tools that a job has; undefined where it has them all. */
export type ToolsAtHand = readonly BenchTool[] | undefined;

export function isAtHand(tools: ToolsAtHand, tool: BenchTool): boolean {
  return tools === undefined || tools.includes(tool);
}

/** What of the bench is not there. */
export function toolsAway(tools: readonly BenchTool[]): readonly BenchTool[] {
  return BENCH_TOOLS.filter((tool) => !tools.includes(tool));
}

export function areAtHand(tools: ToolsAtHand, needed: readonly BenchTool[]): boolean {
  return needed.every((tool) => isAtHand(tools, tool));
}

const TOOL_OF_SITE: Readonly<Partial<Record<AirSite, BenchTool>>> = {
  'pump-hose-end': 'hand-pump',
  'jar-hose-end': 'jar',
  'jar-tee-a': 'jar',
  'jar-tee-b': 'jar',
  'manometer-hose-end': 'manometer',
  'smoke-hose-end': 'smoke-machine',
};

const TOOL_OF_POINT: Readonly<Partial<Record<LeadPoint, BenchTool>>> = {
  'supply-positive': 'bench-supply',
  'supply-negative': 'bench-supply',
  'meter-red-tip': 'meter',
  'meter-black-tip': 'meter',
};

/** What a hand must have to do something. Taking off what cannot be there asks for the tool as well. */
export function toolsOfAction(action: Action): readonly BenchTool[] {
  switch (action.kind) {
    case 'set-meter':
    case 'meter-jack':
    case 'meter-range':
    case 'meter-hold':
    case 'meter-extremes':
    case 'meter-relative':
      return ['meter'];
    case 'place-lead':
      return [TOOL_OF_LEAD[action.end], ...one(TOOL_OF_POINT[action.point])];
    case 'lift-lead':
      return [TOOL_OF_LEAD[action.end]];
    case 'insert-pin':
    case 'remove-pin':
      return ['back-probe-pins'];
    case 'drag-test':
      return ['drag-gauge'];
    case 'switch-jumper':
    case 'renew-jumper-fuse':
      return ['jumper'];
    case 'fit':
      return [...TOOLS_OF_FITTING[action.item], ...one(TOOL_OF_SITE[action.site])];
    case 'take-off':
      return TOOLS_OF_FITTING[action.item];
    case 'pump-handle':
    case 'stroke':
    case 'release':
      return ['hand-pump'];
    case 'switch-supply':
      return ['bench-supply'];
    case 'set-bleed':
      return ['jar'];
    case 'refill-manometer':
      return ['manometer'];
    case 'set-smoke':
      return ['smoke-machine'];
    case 'swap-unit':
      return ['known-good-unit'];
    case 'look':
    case 'listen':
      return action.at === 'jumper' ? ['jumper'] : [];
    case 'clear-codes':
    case 'command-solenoid':
      return ['reader'];
    // A new one is not to be had for a tool that is not there.
    case 'renew':
      return one(TOOL_OF_ITEM[action.item]);
    default:
      return [];
  }
}

const one = (tool: BenchTool | undefined): readonly BenchTool[] => (tool === undefined ? [] : [tool]);
