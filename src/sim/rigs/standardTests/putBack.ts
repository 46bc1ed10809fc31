import { startingBench } from '../../devices/BenchState.ts';
import type { BenchSurface } from '../../devices/BenchSurface.ts';
import {
  type AirSite,
  type Cavity,
  type Fitting,
  LEAD_ENDS,
  type LeadEnd,
  UNIT_PORTS,
  type UnitPort,
} from '../../devices/places.ts';
import type { SingleStep } from './eachStep.ts';
import type { TestStep } from './StandardTest.ts';
import type { TestAction } from './TestBench.ts';

/** What hands have done to a bench that stood as a job begins, as far as it has to be put back. */
interface Disorder {
  readonly sites: Map<AirSite, Fitting>;
  readonly loosened: Set<UnitPort>;
  readonly leads: Set<LeadEnd>;
  readonly pins: Set<Cavity>;
  readonly at: Record<'plug-apart' | 'fuse-out' | 'jumper-on' | 'supply-on', boolean>;
  key: string;
  command: string;
  meterOn: boolean;
  otherJack: boolean;
  bleedOpen: boolean;
  smokeOn: boolean;
  pumped: boolean;
  jar: boolean;
  water: boolean;
  stirred: boolean;
}

/**
 * The steps that put the bench back as a job begins after a procedure that began there: what drives and pumps first,
 * then leads, pins and plug, then vacuum let off, tools off and the truck's own hoses on again, hand tight. It can be
 * worked whatever the procedure found.
 */
export function putBack(steps: readonly SingleStep[], hoses: BenchSurface['hoses']): readonly TestStep[] {
  const left = disorderAfter(steps, hoses);
  return [...quiet(left), ...electrical(left), ...air(left, hoses)];
}

/** The coil's current dies in the controller's clamp, which is fed through the key. */
const COIL_RESTS_S = 0.5;

function quiet(left: Disorder): TestStep[] {
  const steps: TestStep[] = [];
  if (left.at['jumper-on']) steps.push({ kind: 'switch-jumper', on: false });
  if (left.command !== 'off' && left.key !== 'off') {
    steps.push({ kind: 'command-solenoid', command: 'off' }, { kind: 'wait', seconds: COIL_RESTS_S });
  }
  if (left.key !== 'off') steps.push({ kind: 'set-key', position: 'off' });
  if (left.at['supply-on']) steps.push({ kind: 'switch-supply', on: false });
  if (left.smokeOn) steps.push({ kind: 'set-smoke', gas: 'off', pa: 0 });
  return steps;
}

function electrical(left: Disorder): TestStep[] {
  const steps: TestStep[] = [];
  for (const end of LEAD_ENDS) if (left.leads.has(end)) steps.push({ kind: 'lift-lead', end });
  for (const cavity of left.pins) steps.push({ kind: 'remove-pin', cavity });
  if (left.meterOn) steps.push({ kind: 'set-meter', function: 'off' });
  if (left.otherJack) steps.push({ kind: 'meter-jack', jack: 'volts' });
  if (left.at['fuse-out']) steps.push({ kind: 'fit-fuse' });
  if (left.at['plug-apart']) steps.push({ kind: 'mate-plug' });
  return steps;
}

/** Seconds with the release open until the vacuum has gone: of the hand pump alone, and with the 1 L jar on it. */
const LET_OFF_S = 3;
const LET_OFF_JAR_S = 20;
/** Seconds until the truck's own hoses have let go what is left, and a vent that was drawn shut has opened again. */
const SETTLES_S = 8;

function air(left: Disorder, hoses: BenchSurface['hoses']): TestStep[] {
  const steps: TestStep[] = [];
  if (left.jar && !left.bleedOpen) steps.push({ kind: 'set-bleed', openness: 1 });
  if (left.pumped) steps.push({ kind: 'release', open: true });
  if (left.pumped || left.jar) steps.push({ kind: 'wait', seconds: left.jar ? LET_OFF_JAR_S : LET_OFF_S });
  if (left.pumped) steps.push({ kind: 'release', open: false });
  if (left.jar || left.bleedOpen) steps.push({ kind: 'set-bleed', openness: 0 });
  if (left.water) steps.push({ kind: 'refill-if-empty' });
  const own = startingBench(hoses).sites;
  for (const [site, item] of left.sites) if (own[site] !== item) steps.push({ kind: 'take-off', item });
  for (const port of UNIT_PORTS) {
    const hose = own[port];
    if (hose === null) continue;
    if (left.sites.get(port) !== hose) steps.push({ kind: 'fit', item: hose, site: port });
    else if (!left.loosened.has(port)) continue;
    steps.push({ kind: 'clamp', port, setting: 'hand-tight' });
  }
  if (left.stirred) steps.push({ kind: 'wait', seconds: SETTLES_S });
  return steps;
}

function disorderAfter(steps: readonly SingleStep[], hoses: BenchSurface['hoses']): Disorder {
  const bench = startingBench(hoses);
  const fitted = Object.entries(bench.sites).filter(([, item]) => item !== null) as [AirSite, Fitting][];
  const left: Disorder = {
    sites: new Map(fitted),
    loosened: new Set(),
    leads: new Set(),
    pins: new Set(),
    at: { 'plug-apart': false, 'fuse-out': false, 'jumper-on': false, 'supply-on': false },
    key: bench.key,
    command: bench.command,
    meterOn: false,
    otherJack: false,
    bleedOpen: false,
    smokeOn: false,
    pumped: false,
    jar: false,
    water: false,
    stirred: false,
  };
  for (const step of steps) disturb(left, step);
  return left;
}

function disturb(left: Disorder, step: SingleStep): void {
  switch (step.kind) {
    case 'stroke-until':
    case 'stroke':
      left.pumped = true;
      left.stirred = true;
      return;
    case 'wait':
    case 'wait-steady':
    case 'wait-until':
    case 'refill-if-empty':
    case 'read':
      return;
    case 'fit':
    case 'take-off':
    case 'clamp':
      disturbAir(left, step);
      return;
    default:
      disturbRest(left, step);
  }
}

function disturbAir(left: Disorder, step: Extract<TestAction, { kind: 'fit' | 'take-off' | 'clamp' }>): void {
  if (step.kind === 'clamp') {
    if (step.setting === 'hand-tight') left.loosened.delete(step.port);
    else left.loosened.add(step.port);
    return;
  }
  for (const [site, item] of left.sites) if (item === step.item) left.sites.delete(site);
  if (step.kind === 'take-off') return;
  left.sites.set(step.site, step.item);
  const port = UNIT_PORTS.find((name) => name === step.site);
  if (port !== undefined) left.loosened.add(port);
  if (step.item === 'pump-hose') left.pumped = true;
  if (step.item === 'jar-hose') left.jar = true;
  left.stirred = true;
  if (step.item === 'manometer-hose') left.water = true;
}

function disturbRest(left: Disorder, step: TestAction): void {
  switch (step.kind) {
    case 'set-key':
      left.key = step.position;
      if (step.position === 'off') left.command = 'off';
      return;
    case 'command-solenoid':
      left.command = step.command;
      left.stirred = true;
      return;
    case 'place-lead':
      left.leads.add(step.end);
      return;
    case 'lift-lead':
      left.leads.delete(step.end);
      return;
    case 'insert-pin':
      left.pins.add(step.cavity);
      return;
    case 'remove-pin':
      left.pins.delete(step.cavity);
      return;
    case 'part-plug':
    case 'mate-plug':
      left.at['plug-apart'] = step.kind === 'part-plug';
      return;
    case 'pull-fuse':
    case 'fit-fuse':
      left.at['fuse-out'] = step.kind === 'pull-fuse';
      return;
    case 'switch-jumper':
      left.at['jumper-on'] = step.on;
      return;
    case 'switch-supply':
      left.at['supply-on'] = step.on;
      return;
    case 'set-meter':
      left.meterOn = step.function !== 'off';
      return;
    case 'meter-jack':
      left.otherJack = step.jack !== 'volts';
      return;
    case 'set-bleed':
      left.bleedOpen = step.openness > 0;
      return;
    case 'set-smoke':
      left.smokeOn = step.gas !== 'off';
      left.stirred = true;
      return;
    default:
      return;
  }
}
