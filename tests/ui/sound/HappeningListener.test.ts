import { describe, expect, it } from 'vitest';
import type { Happening, HappeningKind } from '../../../src/sim/world/Observation.ts';
import { HappeningListener, type Heard } from '../../../src/ui/sound/HappeningListener.ts';

function listening() {
  const heard: string[] = [];
  const listener = new HappeningListener({
    play: (kind) => heard.push(kind),
    pump: () => heard.push('pump'),
    startTone: () => heard.push('tone starts'),
    stopTone: () => heard.push('tone stops'),
  });
  return { heard, listener };
}

/** Happenings with ids that count up from `firstId`. */
function happened(firstId: number, ...kinds: readonly HappeningKind[]): readonly Happening[] {
  return kinds.map((kind, i) => ({ id: firstId + i, tick: 100 * (firstId + i), kind, at: null }));
}

function seen(happenings: readonly Happening[], tone = false, handle = 0): Heard {
  return { happenings, meter: { tone }, handPump: { handle } };
}

describe('a listener', () => {
  it('plays each happening once, in order', () => {
    const { heard, listener } = listening();
    listener.hear(seen([]));
    listener.hear(seen(happened(1, 'relay', 'click-on')));
    listener.hear(seen(happened(1, 'relay', 'click-on')));
    listener.hear(seen(happened(1, 'relay', 'click-on', 'click-off')));
    expect(heard).toEqual(['relay', 'click-on', 'click-off']);
  });

  it('follows when the oldest happenings have been dropped', () => {
    const { heard, listener } = listening();
    listener.hear(seen(happened(1, 'hiss')));
    listener.hear(seen(happened(40, 'click-on', 'click-off')));
    expect(heard).toEqual(['click-on', 'click-off']);
  });

  it('keeps silent about what happened before it listened', () => {
    const { heard, listener } = listening();
    listener.hear(seen(happened(5, 'click-on', 'click-off')));
    expect(heard).toEqual([]);
    listener.hear(seen(happened(5, 'click-on', 'click-off', 'spark')));
    expect(heard).toEqual(['spark']);
  });

  it('lets the tone sound for as long as the meter does', () => {
    const { heard, listener } = listening();
    listener.hear(seen([]));
    listener.hear(seen(happened(1, 'tone'), true));
    listener.hear(seen(happened(1, 'tone'), true));
    listener.hear(seen(happened(1, 'tone'), false));
    expect(heard).toEqual(['tone starts', 'tone stops']);
  });

  it('does not miss a tone that began and ended between two observations', () => {
    const { heard, listener } = listening();
    listener.hear(seen([]));
    listener.hear(seen(happened(1, 'tone'), false));
    expect(heard).toEqual(['tone']);
  });

  it('plays the pump once a stroke, however the handle trembles', () => {
    const { heard, listener } = listening();
    const travels = [0, 0.06, 0.3, 0.09, 0.12, 1, 0.4, 0.02, 0, 0.5];
    for (const handle of travels) listener.hear(seen([], false, handle));
    expect(heard).toEqual(['pump', 'pump']);
  });
});
