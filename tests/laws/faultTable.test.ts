import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { TOOL_ITEMS } from '../../src/sim/devices/items.ts';
import { PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import type { FaultEntry } from '../../src/sim/faults/Fault.ts';
import { OWN_FLAP_FAULTS } from '../../src/sim/faults/flapActuator.ts';

const README = readFileSync(new URL('../../scenarios/README.md', import.meta.url), 'utf8');

/** The range as an author reads it. */
function range({ severity }: FaultEntry): string {
  if (severity === null) return '–';
  const { mildest, worst, unit } = severity;
  const short = (value: number): string => String(Number(value.toPrecision(6)));
  switch (unit) {
    case 'm':
      return `${short(mildest * 1000)} to ${short(worst * 1000)} mm`;
    case 'ohm':
      return `${short(mildest)} to ${short(worst)} Ω`;
    case 'pascal':
      return `${short(mildest / 1000)} to ${short(worst / 1000)} kPa`;
    case 'share':
      return `${short(mildest)} to ${short(worst)}`;
  }
}

function row(fault: FaultEntry): string {
  const moves = fault.intermittent === null ? '–' : fault.intermittent === 'when-moved' ? 'moved' : 'trials';
  const tool = TOOL_ITEMS.includes(fault.item) ? ' (a tool: never the answer)' : '';
  return `| \`${fault.id}\` | ${range(fault)} | ${moves} | \`${fault.item}\`${tool} |`;
}

/** The fault rows of the table under a heading. */
function tableUnder(heading: string): readonly string[] {
  const section = README.slice(README.indexOf(heading) + heading.length);
  const rows = section.slice(0, section.indexOf('\n## ')).split('\n');
  return rows.filter((line) => /^\| `[a-z0-9-]+` \| (–|[0-9])/.test(line));
}

test('the tables of faults for authors say what the catalogue says', () => {
  expect(tableUnder('\n## Faults')).toEqual(PUMP_FAULTS.filter(({ weight }) => weight > 0).map(row));
  expect(tableUnder('\n## Rigs')).toEqual(OWN_FLAP_FAULTS.map(row));
});

test('every verb of an action file is documented', async () => {
  const { VERBS } = await import('../../src/cli/verbs.ts');
  const verbs = README.slice(README.indexOf('## Files of actions'), README.indexOf('## How a job is scored'));
  for (const verb of Object.keys(VERBS)) expect(verbs, verb).toMatch(new RegExp(`\`${verb}[ \`]`));
});

test('every key of a walkthrough condition is documented', async () => {
  const { doneConditionSchema } = await import('../../src/training/scenario/DoneCondition.ts');
  const section = README.slice(
    README.indexOf('## Steps of a walkthrough'),
    README.indexOf('## Files of actions'),
  );
  for (const key of Object.keys(doneConditionSchema.shape)) expect(section, key).toContain(`\`${key}: `);
});

test('every place, thing and item that an action file may name is listed', async () => {
  const places = await import('../../src/sim/devices/places.ts');
  const { SIGNS } = await import('../../src/sim/world/Observation.ts');
  const { ITEMS } = await import('../../src/sim/devices/items.ts');
  const words = new Set(README.match(/[a-z0-9-]+/g));
  for (const list of [
    places.LEAD_POINTS,
    places.LEAD_ENDS,
    places.AIR_SITES,
    places.FITTINGS,
    places.METER_FUNCTIONS,
    places.METER_JACKS,
    places.EXAMINED_PLACES,
    places.WIGGLE_PLACES,
    places.SMOKE_GASES,
    places.UNITS,
    places.SMOKE_PLACES,
    SIGNS,
    ITEMS,
  ])
    for (const word of list) expect(words, word).toContain(word);
});
