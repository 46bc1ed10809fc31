import { CONDITION_FIELDS } from './scenarioConditions.ts';

/** What a field of a scenario file holds, in the words of the authors' guide and of an editor that shows them. */
export interface FieldWords {
  /** How it is written, where that is not plain. */
  readonly example?: string;
  readonly holds: string;
}

/**
 * Every field of a scenario file, by its path; `[]` stands for each entry of a list. The guide's tables and the JSON
 * Schema for editors are made of this, and a law holds it against the schema.
 */
export const SCENARIO_FIELDS: Readonly<Record<string, FieldWords>> = {
  format: { holds: 'always `1`' },
  id: {
    holds:
      'name of the scenario: small letters, digits, single hyphens, 60 at most. Name the file after it. **The learner sees it, so it must not give the answer away**',
  },
  rig: {
    holds:
      'the rig on the bench: `leak-detection-pump`, which is meant where this is left out, or `flap-actuator` (see below). It says which faults, places and tests there are',
  },
  title: { holds: 'title on the job board, up to 80 characters. Must not give the answer away either' },
  summary: { holds: 'one to three sentences for the job board' },
  mode: {
    holds:
      '`introduction` (led step by step, with no verdict and no score; see below), `walkthrough` (led through a whole job), `practice`, or `assessment`',
  },
  level: { holds: '`1` to `4`, easy to hard; orders the job board' },
  minutes: {
    holds:
      'what a careful learner should need at the screen, 5 to 240; not book minutes, of which par often has twice as many',
  },
  aims: { holds: 'one to eight things the learner should be able to do afterwards' },
  'work-order': { holds: 'what the learner is handed with the truck' },
  'work-order.number': { holds: 'number of the order' },
  'work-order.vehicle': { holds: 'the vehicle in a line' },
  'work-order.complaint': { holds: 'what the customer says' },
  'work-order.history': { holds: 'what was done before, in order (a list, may be empty: `[]`)' },
  'work-order.renewed': {
    holds: 'parts of the truck that are new (see below). May be left out',
  },
  'work-order.codes': { holds: 'trouble codes on file (a list, may be empty: `[]`)' },
  'work-order.codes[].code': { holds: 'the code, as `P0456`' },
  'work-order.codes[].status': { holds: '`stored` or `pending`' },
  'work-order.cautions': {
    holds:
      "at least one. Petrol vapour, sparks, key off before the plug, vacuum limits; and that on a real truck the vehicle's service information, local codes and licensed practice come first",
  },
  bench: { holds: 'where the truck stands' },
  'bench.ambient-celsius': { holds: 'temperature of bench and coil, −30 to 50' },
  'bench.altitude-metres': { holds: '−400 to 4500. High up there is less vacuum to be had' },
  'bench.fuel-percent': { holds: 'fuel in the tank, 0 to 100' },
  tools: { holds: 'what is at hand, a list (see below). Left out: everything' },
  limits: { holds: 'what the job may take (see below). May be left out, as may each of the two' },
  'limits.minutes': { holds: 'book minutes for the whole job, 10 to 600' },
  'limits.dollars': { holds: 'dollars for parts, 0 to 5000' },
  seed: {
    holds:
      'any small word. Draws the tolerances of this truck: another word, another truck of the same make. Or a word with a policy, as `{ word: yard, policy: fixed }` (see below)',
  },
  drives: { holds: 'how far the truck was driven with the faults in (see below)' },
  'drives.cycles': {
    holds: 'drive cycles with the faults in before the order was written, 0 to 40 (see below)',
  },
  'drives.refuelled': { holds: '`true` when the tank was filled just before them, or `false`' },
  faults: { holds: 'what is wrong (see below). `[]` means that nothing is wrong. Four at most' },
  'faults[].fault': { holds: 'name of the fault, from the table below' },
  'faults[].severity': {
    holds: 'where the fault has degrees: from `0` (mildest) to `1` (worst). Else left out',
  },
  'faults[].severity-to': {
    holds:
      'makes a range of the severity: each seat has its own between the two (see *Variants*). Else left out',
  },
  'faults[].when-moved': {
    holds: '`true` makes a fault of the harness come and go (see below). Else left out',
  },
  'faults[].root': {
    holds: 'what spoiled the part and will spoil the renewed one (see below). May be left out',
  },
  variants: {
    holds:
      'other truths of the same job, up to eight, so that each seat has its own (see *Variants*). May be left out',
  },
  'variants[].faults': { holds: 'what is wrong in this one, as under `faults`' },
  'variants[].faults[].fault': { holds: 'as above' },
  'variants[].faults[].severity': { holds: 'as above' },
  'variants[].faults[].severity-to': { holds: 'as above' },
  'variants[].faults[].when-moved': { holds: 'as above' },
  'variants[].faults[].root': { holds: 'as above' },
  'variants[].codes': { holds: 'the codes that these faults leave. Left out: those of the work order' },
  'variants[].codes[].code': { holds: 'as above' },
  'variants[].codes[].status': { holds: 'as above' },
  'variants[].drives': { holds: 'how far this truck was driven. Left out: as above' },
  'variants[].drives.cycles': { holds: 'as above' },
  'variants[].drives.refuelled': { holds: 'as above' },
  'variants[].complaint': { holds: 'what the customer says in this one. Left out: as above' },
  'variants[].history': { holds: 'what was done before in this one. Left out: as above' },
  'variants[].remark': { holds: 'your last word on this one. Left out: as above' },
  rules: { holds: 'may be left out' },
  'rules.off': { holds: 'method rules that this job does not ask for (see below)' },
  'rules.on': { holds: 'duties that this job asks for whatever its plan (see below). May be left out' },
  weights: {
    holds:
      'what the parts of the score are worth, 100 together (see below). May be left out: 25, 30, 25, 10, 10',
  },
  'weights.verdict': { holds: 'points for the verdict, 0 to 60' },
  'weights.evidence': { holds: 'points for the evidence, 10 to 60' },
  'weights.method': { holds: 'points for method, 0 to 60' },
  'weights.economy': { holds: 'points for economy, 0 to 60' },
  'weights.repair': { holds: 'points for the repair proven, 0 to 60' },
  walkthrough: { holds: 'the steps, in a walkthrough or an introduction only (see below)' },
  'walkthrough[].id': { holds: 'name of the step: small letters, digits, single hyphens' },
  'walkthrough[].say': { holds: 'why it is done, up to 600 characters' },
  'walkthrough[].how': { holds: 'how to do it, up to 800 characters' },
  'walkthrough[].done': { holds: 'when it is done: one or more of the keys of the table further below' },
  remark: { holds: 'your last word, shown in the debrief. Nobody sees it before the job is closed' },
  ...Object.fromEntries(
    Object.entries(CONDITION_FIELDS).map(([key, words]) => [`walkthrough[].done.${key}`, words]),
  ),
};
