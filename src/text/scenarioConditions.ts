import type { FieldWords } from './scenarioFields.ts';

const SAME_IN_OHMS = 'the same in ohms. Over range counts as above everything';

const band = (key: string): Readonly<Record<string, FieldWords>> => ({
  [`${key}.above`]: { holds: 'more than this' },
  [`${key}.below`]: { holds: 'less than this' },
});

/** What can be asked under `done` of a step, by its path below it, with how it is written. */
export const CONDITION_FIELDS: Readonly<Record<string, FieldWords>> = {
  phase: {
    example: 'phase: bench',
    holds: 'the job is taken (`repair`: the verdict is given; `closed`: it is closed)',
  },
  key: { example: 'key: on', holds: 'the key stands so (`off`, `on`, `running`)' },
  plug: { example: 'plug: parted', holds: 'the plug at the unit is `parted` or `mated`' },
  'meter-on': {
    example: 'meter-on: volts-dc',
    holds: 'the selector stands so (any function of the meter, as under *Files of actions*)',
  },
  'meter-volts': {
    example: 'meter-volts: { above: 8, below: 10 }',
    holds: 'the meter shows volts in this band, settled. One of the two will do',
  },
  ...band('meter-volts'),
  'meter-ohms': { example: 'meter-ohms: { above: 30, below: 35 }', holds: SAME_IN_OHMS },
  ...band('meter-ohms'),
  'leads-on': {
    example: 'leads-on: [{ end: meter-red, point: cavity-3-back }]',
    holds: 'these lead ends are on these points',
  },
  'leads-on[].end': { holds: 'the end of a lead' },
  'leads-on[].point': { holds: 'the point that it is on' },
  'leads-off': { example: 'leads-off: [plain-a]', holds: 'these lead ends are loose' },
  'pins-in': { example: 'pins-in: [3]', holds: 'these back-probe pins are in' },
  'pins-out': { example: 'pins-out: true', holds: 'no back-probe pin is in' },
  fitted: { example: 'fitted: [{ item: cap-a, site: air-port }]', holds: 'these are where you say' },
  'fitted[].item': { holds: 'a hose, a cap or the pump' },
  'fitted[].site': { holds: 'the port or end that it is on' },
  'taken-off': { example: 'taken-off: [air-hose]', holds: 'these are on nothing' },
  clamped: {
    example: 'clamped: [{ port: air-port, setting: hand-tight }]',
    holds: 'these clamps are set so',
  },
  'clamped[].port': { holds: 'the port of the unit' },
  'clamped[].setting': { holds: '`loose`, `hand-tight` or `over-tight`' },
  'gauge-above-inhg': { example: 'gauge-above-inhg: 5', holds: "the pump's needle stands above this" },
  'gauge-below-inhg': { example: 'gauge-below-inhg: 0.5', holds: "the pump's needle stands below this" },
  release: { example: 'release: open', holds: "the pump's release is `open` or `shut`" },
  jumper: { example: 'jumper: on', holds: "the jumper's switch is `on` or `off`" },
  solenoid: { example: 'solenoid: on', holds: 'the reader commands it so (`off`, `on`, `pulse`)' },
  clicks: { example: 'clicks: 3', holds: 'the plunger was heard to pull in so often' },
  'vacuum-cycles': {
    example: 'vacuum-cycles: { above-inhg: 5, times: 2 }',
    holds: 'the needle went above the figure and came back below 0.5 inHg so often',
  },
  'vacuum-cycles.above-inhg': { holds: 'the figure, inHg' },
  'vacuum-cycles.times': { holds: 'how often, 1 to 10' },
  'held-seconds': {
    example: 'held-seconds: 20',
    holds: 'the pump has not been touched for so long, its release shut',
  },
  logged: {
    example: 'logged: { function: volts-dc, red: cavity-3-back }',
    holds: 'a log entry was made like this. Each of its keys may be left out',
  },
  'logged.function': { holds: 'the function of the meter' },
  'logged.red': { holds: 'where the red lead was' },
  'logged.black': { holds: 'where the black lead was' },
  'logged.meter-volts': { holds: 'what the entry says, settled, volts' },
  ...band('logged.meter-volts'),
  'logged.meter-ohms': { holds: SAME_IN_OHMS },
  ...band('logged.meter-ohms'),
  'logged.gauge-above-inhg': { holds: "the pump's needle stood above this" },
  'logged.gauge-below-inhg': { holds: "the pump's needle stood below this" },
  'logged.clicks-heard': { holds: 'so many clicks were heard' },
  'logged.times': { holds: 'so many entries like this were made' },
  unit: { example: 'unit: known-good', holds: 'this unit stands on the bench (`truck`, `known-good`)' },
  moved: {
    example: 'moved: plug',
    holds: 'a hand is moving this stretch of the harness (`feed`, `ground`, `sense`, `plug`)',
  },
  jack: { example: 'jack: milliamps', holds: "the meter's red plug is in this jack" },
  supply: { example: 'supply: on', holds: 'the bench supply is `on` or `off`' },
  lamp: { example: 'lamp: lit', holds: 'the test lamp is `lit` or `dark`' },
  'manometer-above-inh2o': {
    example: 'manometer-above-inh2o: 8',
    holds: 'the water column stands above this',
  },
  'manometer-below-inh2o': {
    example: 'manometer-below-inh2o: 0.5',
    holds: 'the water column stands below this',
  },
  'smoke-at': { example: 'smoke-at: [filler-cap]', holds: 'smoke comes out at all of these places' },
  found: {
    example: 'found: { at: plug, sign: moisture }',
    holds: 'someone looked, listened or felt there',
  },
  'found.at': { holds: 'the place' },
  'found.sign': { holds: 'what was found there. Left out: anything' },
  'looked-into': {
    example: 'looked-into: canister-hose',
    holds: 'someone looked into the open end of this hose: it was off, with nothing in its end',
  },
  'codes-read': { example: 'codes-read: true', holds: 'the codes were read' },
  codes: { example: 'codes: none', holds: 'the reader, key on, has no stored and no pending code to show' },
  driven: { example: 'driven: 2', holds: 'so many drive cycles were driven' },
  monitor: {
    example: 'monitor: passed',
    holds: 'on the last drive the monitor ran, and the last time it passed',
  },
  'coach-asked': {
    example: 'coach-asked: question',
    holds: 'the coach was asked, so far at least (`question`, `test`, `procedure`)',
  },
  marked: {
    example: 'marked: [{ item: fuse, mark: cleared }]',
    holds: 'the suspect board stands so, each mark with an entry cited',
  },
  'marked[].item': { holds: 'the item' },
  'marked[].mark': { holds: '`cleared` or `convicted`' },
  verdict: { example: 'verdict: given', holds: 'the verdict is given' },
  named: {
    example: 'named: { item: unit, mode: vacuum-switch }',
    holds: 'the verdict named this item, and said this is wrong with it',
  },
  'named.item': { holds: 'the item' },
  'named.mode': { holds: 'what is said to be wrong with it. May be left out' },
  renewed: { example: 'renewed: unit', holds: 'this item was renewed' },
};
