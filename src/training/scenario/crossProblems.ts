import { closestWords } from '../../base/closestWords.ts';
import { RIG_IDS } from '../../sim/devices/BenchSurface.ts';
import { FAULTS, faultById, isRootCause } from '../../sim/faults/catalogue.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import { rigNamed } from '../../sim/rigs/rigs.ts';
import { fieldOf } from './rawField.ts';
import { stepsOfOtherRig } from './rigProblems.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import { termProblems } from './termProblems.ts';
import { textProblems } from './textProblems.ts';
import { toolProblems } from './toolProblems.ts';
import { variantProblems } from './variantProblems.ts';
import type { YamlPlaces } from './YamlPlaces.ts';

type Path = readonly (string | number)[];

/**
 * What one field says against another, and against the fault catalogue. Works on the raw content, so that these
 * problems are told together with those of the schema.
 */
export function crossProblems(content: object, places: YamlPlaces): ScenarioProblem[] {
  const raw = content as Readonly<Record<string, unknown>>;
  const rig = rigNamed(RIG_IDS.find((id) => id === raw['rig']));
  return [
    ...introductionProblems(raw, places),
    ...faultProblems(raw.faults, places, ['faults'], rig),
    ...variantProblems(raw, places, (faults, at) => faultProblems(faults, places, at, rig)),
    ...stepProblems(raw.mode, raw.walkthrough, places, rig),
    ...stepsOfOtherRig(raw.walkthrough, places, rig),
    ...termProblems(raw, places, rig),
    ...toolProblems(raw, places),
    ...textProblems(raw, places),
  ];
}

/** An introduction asks for no verdict, so there must be nothing to find: no fault, and no code that one left. */
function introductionProblems(
  { mode, faults, 'work-order': order }: Readonly<Record<string, unknown>>,
  places: YamlPlaces,
): ScenarioProblem[] {
  if (mode !== 'introduction') return [];
  const problems: ScenarioProblem[] = [];
  if (isFilled(faults))
    problems.push(places.problem('faults-in-introduction', ['faults'], { list: 'faults' }));
  if (isFilled(fieldOf(order, 'codes'))) {
    problems.push(places.problem('faults-in-introduction', ['work-order', 'codes'], { list: 'codes' }));
  }
  return problems;
}

function isFilled(list: unknown): boolean {
  return Array.isArray(list) && list.length > 0;
}

function faultProblems(faults: unknown, places: YamlPlaces, at: Path, rig: RigDefinition): ScenarioProblem[] {
  if (!Array.isArray(faults)) return [];
  const problems: ScenarioProblem[] = [];
  const seen = new Set<string>();
  const listed = new Set(faults.map(nameOf));
  faults.forEach((entry: unknown, index) => {
    if (typeof entry !== 'object' || entry === null) return;
    const { fault, severity, root, 'when-moved': whenMoved } = entry as Readonly<Record<string, unknown>>;
    if (typeof fault !== 'string') return;
    const known = faultById(fault);
    if (known === undefined) {
      problems.push(
        places.problem('unknown-fault', [...at, index, 'fault'], {
          fault,
          known: closestFaults(fault, rig),
        }),
      );
      return;
    }
    if (!rig.faults.includes(known)) {
      problems.push(
        places.problem('fault-of-other-rig', [...at, index, 'fault'], {
          fault,
          rig: rig.id,
          known: closestFaults(fault, rig),
        }),
      );
    }
    if (seen.has(fault)) problems.push(places.problem('duplicate-fault', [...at, index, 'fault'], { fault }));
    seen.add(fault);
    if (known.severity !== null && severity === undefined) {
      problems.push(places.problem('severity-missing', [...at, index], { fault }));
    } else if (known.severity === null && severity !== undefined) {
      problems.push(places.problem('severity-not-used', [...at, index, 'severity'], { fault }));
    }
    if (known.weight === 0)
      problems.push(places.problem('fault-not-at-start', [...at, index, 'fault'], { fault }));
    if (whenMoved === true && known.intermittent !== 'when-moved') {
      const allowed = FAULTS.filter(({ intermittent }) => intermittent === 'when-moved').map(({ id }) => id);
      problems.push(
        places.problem('when-moved-not-allowed', [...at, index, 'when-moved'], {
          fault,
          allowed: allowed.join(', '),
        }),
      );
    }
    if (typeof root === 'string')
      problems.push(...rootProblems(root, listed, [...at, index, 'root'], places));
  });
  return problems;
}

/** Of all that can be there when a job begins, those that were most likely meant. */
function closestFaults(written: string, { faults }: RigDefinition): string {
  const starting = faults.filter(({ weight }) => weight > 0).map(({ id }) => id);
  return closestWords(written, starting, MOST_CLOSEST).join(', ');
}

const MOST_CLOSEST = 4;

function rootProblems(
  root: string,
  listed: ReadonlySet<unknown>,
  path: Path,
  places: YamlPlaces,
): ScenarioProblem[] {
  if (!isRootCause(root)) {
    const roots = FAULTS.filter(({ id }) => isRootCause(id)).map(({ id }) => id);
    return [places.problem('not-a-root', path, { root, allowed: roots.join(', ') })];
  }
  return listed.has(root) ? [] : [places.problem('root-not-listed', path, { root })];
}

function nameOf(entry: unknown): unknown {
  return fieldOf(entry, 'fault');
}

function stepProblems(
  mode: unknown,
  steps: unknown,
  places: YamlPlaces,
  rig: RigDefinition,
): ScenarioProblem[] {
  const problems: ScenarioProblem[] = [];
  if ((mode === 'walkthrough' || mode === 'introduction') && steps === undefined)
    problems.push(places.problem('steps-missing', [], { mode }, 'mode'));
  if ((mode === 'practice' || mode === 'assessment') && steps !== undefined) {
    problems.push(places.problem('steps-not-allowed', [], { mode }, 'walkthrough'));
  }
  if (!Array.isArray(steps)) return problems;
  const seen = new Set<string>();
  steps.forEach((step: unknown, index) => {
    if (typeof step !== 'object' || step === null) return;
    const { id, done } = step as Readonly<Record<string, unknown>>;
    problems.push(...modeProblems(done, ['walkthrough', index, 'done'], places, rig));
    if (typeof id !== 'string') return;
    if (seen.has(id)) problems.push(places.problem('duplicate-step', ['walkthrough', index, 'id'], { id }));
    seen.add(id);
  });
  return problems;
}

/** A step that asks for a verdict: what is to be said wrong with the item must be a way in which it fails. */
function modeProblems(
  done: unknown,
  path: readonly (string | number)[],
  places: YamlPlaces,
  rig: RigDefinition,
): ScenarioProblem[] {
  const named = fieldOf(done, 'named');
  const [item, mode] = [fieldOf(named, 'item'), fieldOf(named, 'mode')];
  if (typeof item !== 'string' || typeof mode !== 'string') return [];
  const modes = rig.faults
    .filter((fault) => fault.item === item && fault.weight > 0)
    .map((fault) => fault.mode);
  if (modes.includes(mode)) return [];
  if (modes.length === 0) {
    return [places.problem('unknown-key', [...path, 'named'], { key: 'mode' }, 'mode')];
  }
  const allowed = [...new Set(modes)].join(', ');
  return [places.problem('not-one-of', [...path, 'named', 'mode'], { allowed, found: mode.slice(0, 60) })];
}
