import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import type { SetUp } from './setUp.ts';

const LISTEN_TICKS: Tick = secondsToTicks(0.8);
/** A pulsed solenoid has clicked several times by then. */
const PULSE_TICKS: Tick = secondsToTicks(2.2);

const ENERGISES: ReadonlySet<SittingAction['kind']> = new Set([
  'command-solenoid',
  'switch-jumper',
  'switch-supply',
  'set-key',
]);

/** A harness is moved for a second; a contact that opens meanwhile lets a solenoid drop out. */
const MOVED_TICKS: Tick = secondsToTicks(1.3);

/** Whether an action may make the solenoid move, in or out. */
export function energises(action: SittingAction): boolean {
  return ENERGISES.has(action.kind);
}

/** Whether it may make it pull in. Each is a trial of its own; letting go again belongs to it. */
export function beginsTrial(action: SittingAction): boolean {
  switch (action.kind) {
    case 'command-solenoid':
      return action.command !== 'off';
    case 'switch-jumper':
    case 'switch-supply':
      return action.on;
    case 'set-key':
      return action.position !== 'off';
    default:
      return false;
  }
}

/** Something that was listened for, from a tick on. */
export interface ListenedFor {
  readonly about: 'click' | 'hiss';
  readonly since: Tick;
  readonly setUp: string;
}

/** The ear after an action: a click or its absence after whatever may move the solenoid, a hiss where air may come in. */
export class Listening {
  private now: (ListenedFor & { readonly until: Tick }) | null = null;

  /** An action was done. Returns what was listened for until then, if the action ends it. */
  after(action: SittingAction, tick: Tick, { circuit, air }: SetUp): ListenedFor | null {
    if (energises(action)) {
      const pulsed = action.kind === 'command-solenoid' && action.command === 'pulse';
      const until = tick + (pulsed ? PULSE_TICKS : LISTEN_TICKS);
      return this.begin({ about: 'click', since: tick, until, setUp: `click ${action.kind} ${circuit}` });
    }
    if (action.kind === 'wiggle') {
      const until = tick + MOVED_TICKS;
      return this.begin({ about: 'click', since: tick, until, setUp: `click ${action.at} ${circuit}` });
    }
    if (action.kind === 'take-off' || (action.kind === 'release' && action.open)) {
      const until = tick + LISTEN_TICKS;
      return this.begin({ about: 'hiss', since: tick, until, setUp: `hiss ${action.kind} ${air}` });
    }
    return null;
  }

  /** What has been listened for long enough at this tick. */
  due(tick: Tick): ListenedFor | null {
    return this.now !== null && tick >= this.now.until ? this.end(tick) : null;
  }

  private begin(next: ListenedFor & { readonly until: Tick }): ListenedFor | null {
    const ended = this.end(next.since);
    this.now = next;
    return ended;
  }

  private end(tick: Tick): ListenedFor | null {
    const was = this.now;
    this.now = null;
    return was !== null && tick > was.since ? was : null;
  }
}
