import { err, ok } from '../../../base/Result.ts';
import type { RigParameters } from '../../devices/parameters.ts';
import type { Cavity, ExaminedPlace } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';
import { LOOKS } from './looks.ts';

/** Spread from which a terminal does not hold the drag gauge's weight any more. Common practice, no source. */
const SLACK_FROM = 0.3;

const SPREAD: Readonly<Record<Cavity, keyof RigParameters>> = { 1: 'spread1', 2: 'spread2', 3: 'spread3' };

/** Goes to a place with the eyes. What is found is a fact of the place; what it means is for the learner to say. */
export function look(context: ApplyContext, at: ExaminedPlace): Applied {
  if (!context.surface.examined.includes(at)) return err('cannot-be-reached');
  const seen = LOOKS[at](context);
  context.find('look', at, null, seen.length > 0 ? seen : ['nothing-wrong']);
  return ok(undefined);
}

/** Goes to a place with the ears. */
export function listen({ surface, find, hisses }: ApplyContext, at: ExaminedPlace): Applied {
  if (!surface.examined.includes(at)) return err('cannot-be-reached');
  find('listen', at, null, [hisses(at) ? 'hiss' : 'quiet']);
  return ok(undefined);
}

/** Feels a terminal of the parted harness half with the pin-drag gauge. */
export function dragTest({ bench, find, parameters }: ApplyContext, cavity: Cavity): Applied {
  if (bench.plugMated) return err('plug-must-be-parted');
  const slack = parameters[SPREAD[cavity]] >= SLACK_FROM;
  find('drag', 'plug', cavity, [slack ? 'terminal-slack' : 'terminal-grips']);
  return ok(undefined);
}
