import { FAULTS, faultById, isRootCause } from '../../sim/faults/catalogue.ts';
import type { YamlPlaces } from './readYaml.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';

/**
 * What one field says against another, and against the fault catalogue. Works on the raw content, so that these
 * problems are told together with those of the schema.
 */
export function crossProblems(content: object, places: YamlPlaces): ScenarioProblem[] {
  const raw = content as Readonly<Record<string, unknown>>;
  return [...faultProblems(raw.faults, places), ...stepProblems(raw.mode, raw.walkthrough, places)];
}

function faultProblems(faults: unknown, places: YamlPlaces): ScenarioProblem[] {
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
        places.problem('unknown-fault', ['faults', index, 'fault'], {
          fault,
          known: FAULTS.filter(({ weight }) => weight > 0)
            .map(({ id }) => id)
            .join(', '),
        }),
      );
      return;
    }
    if (seen.has(fault))
      problems.push(places.problem('duplicate-fault', ['faults', index, 'fault'], { fault }));
    seen.add(fault);
    if (known.severity !== null && severity === undefined) {
      problems.push(places.problem('severity-missing', ['faults', index], { fault }));
    } else if (known.severity === null && severity !== undefined) {
      problems.push(places.problem('severity-not-used', ['faults', index, 'severity'], { fault }));
    }
    if (known.weight === 0)
      problems.push(places.problem('fault-not-at-start', ['faults', index, 'fault'], { fault }));
    if (whenMoved === true && known.intermittent !== 'when-moved') {
      const allowed = FAULTS.filter(({ intermittent }) => intermittent === 'when-moved').map(({ id }) => id);
      problems.push(
        places.problem('when-moved-not-allowed', ['faults', index, 'when-moved'], {
          fault,
          allowed: allowed.join(', '),
        }),
      );
    }
    if (typeof root === 'string') problems.push(...rootProblems(root, listed, index, places));
  });
  return problems;
}

function rootProblems(
  root: string,
  listed: ReadonlySet<unknown>,
  index: number,
  places: YamlPlaces,
): ScenarioProblem[] {
  const path = ['faults', index, 'root'];
  if (!isRootCause(root)) {
    const roots = FAULTS.filter(({ id }) => isRootCause(id)).map(({ id }) => id);
    return [places.problem('not-a-root', path, { root, allowed: roots.join(', ') })];
  }
  return listed.has(root) ? [] : [places.problem('root-not-listed', path, { root })];
}

function nameOf(entry: unknown): unknown {
  return typeof entry === 'object' && entry !== null
    ? (entry as Readonly<Record<string, unknown>>).fault
    : null;
}

function stepProblems(mode: unknown, steps: unknown, places: YamlPlaces): ScenarioProblem[] {
  const problems: ScenarioProblem[] = [];
  if (mode === 'walkthrough' && steps === undefined)
    problems.push(places.problem('steps-missing', [], {}, 'mode'));
  if ((mode === 'practice' || mode === 'assessment') && steps !== undefined) {
    problems.push(places.problem('steps-not-allowed', [], { mode }, 'walkthrough'));
  }
  if (!Array.isArray(steps)) return problems;
  const seen = new Set<string>();
  steps.forEach((step: unknown, index) => {
    if (typeof step !== 'object' || step === null) return;
    const { id } = step as Readonly<Record<string, unknown>>;
    if (typeof id !== 'string') return;
    if (seen.has(id)) problems.push(places.problem('duplicate-step', ['walkthrough', index, 'id'], { id }));
    seen.add(id);
  });
  return problems;
}
