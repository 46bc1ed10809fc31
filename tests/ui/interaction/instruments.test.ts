import { describe, expect, it } from 'vitest';
import type { MeterObservation } from '../../../src/sim/world/Observation.ts';
import { PumpDrag, quantiseHandle } from '../../../src/ui/interaction/PumpDrag.ts';
import { ReadingVoice, withinOneCount } from '../../../src/ui/interaction/ReadingVoice.ts';
import { shortcutOf, takesLetters } from '../../../src/ui/interaction/shortcuts.ts';
import { startObservation } from '../layout/benchObservations.ts';

describe('the pump handle under a drag', () => {
  it('moves in whole 64ths of the drawn stroke', () => {
    const drag = new PumpDrag(0, 100, 104);
    expect(drag.move(152, 0)).toBe(0.5);
    expect(quantiseHandle(0.3) * 64).toBe(19);
  });

  it('sends thirty positions a second at most, and never loses the last', () => {
    const drag = new PumpDrag(0, 0, 100);
    const sent: number[] = [];
    for (let ms = 0; ms <= 1000; ms += 4) {
      const position = drag.move(ms / 10, ms);
      if (position !== null) sent.push(position);
    }
    expect(sent.length).toBeGreaterThan(20);
    expect(sent.length).toBeLessThanOrEqual(31);
    drag.move(37, 1001);
    expect(drag.end(1002)).toBe(quantiseHandle(0.37));
    expect(drag.end(1003)).toBeNull();
  });

  it('stays within the stroke', () => {
    const drag = new PumpDrag(0.5, 0, 100);
    expect(drag.move(900, 0)).toBe(1);
    expect(drag.move(-900, 100)).toBe(0);
  });
});

function meter(digits: string, extra: Partial<MeterObservation> = {}): MeterObservation {
  const value = digits.includes('OL') || digits === '' ? null : Number(digits);
  return {
    ...startObservation().meter,
    function: 'volts-dc',
    display: { digits, unit: 'V', value, bar: 0, settled: true },
    ...extra,
  };
}

/** Sentences spoken while the display shows `shown(seconds)`, looked at sixty times a second. */
function spoken(
  shown: (s: number) => MeterObservation,
  seconds: number,
  mode: 'settled' | 'continuous' | 'off' = 'settled',
) {
  const voice = new ReadingVoice();
  const out: string[] = [];
  for (let frame = 0; frame <= seconds * 60; frame++) {
    const s = frame / 60;
    const reading = voice.hear(shown(s), s, mode);
    if (reading !== null) out.push(`${s.toFixed(1)} ${reading.kind} ${reading.digits}`);
  }
  return out;
}

// The rule of the design: more than one count, still for half a second, at most every two seconds.
describe('what is spoken of the meter', () => {
  it('says a settled reading once, and nothing of a last digit that hunts', () => {
    expect(spoken((s) => meter(s % 0.5 < 0.25 ? '8.92' : '8.93'), 10)).toEqual(['0.5 number 8.92']);
  });

  it('says nothing of a display that hunts over three counts, however it was told first', () => {
    // First seen at one end of where it hunts.
    const hunting = ['12.61', '12.62', '12.63', '12.63', '12.62', '12.63'];
    const shown = (s: number) => meter(hunting[s < 0.7 ? 0 : Math.floor(s / 0.5) % hunting.length] ?? '');
    expect(spoken(shown, 20)).toEqual(['0.5 number 12.61']);
  });

  it('says a move of two counts that lasts', () => {
    expect(spoken((s) => meter(s < 5 ? '0.20' : '0.22'), 12)).toEqual([
      '0.5 number 0.20',
      expect.stringMatching(/^7\.0 number 0\.22/),
    ]);
  });

  it('waits until a changing reading stands still', () => {
    const said = spoken((s) => meter(s < 3 ? '9.00' : s < 4 ? (9 - (s - 3) * 9).toFixed(2) : '0.00'), 8);
    expect(said).toEqual(['0.5 number 9.00', expect.stringMatching(/^4\.[45] number 0\.0/)]);
  });

  it('speaks every two seconds at most, even when told to speak all the time', () => {
    const said = spoken((s) => meter(s.toFixed(1)), 10, 'continuous');
    expect(said.length).toBeGreaterThanOrEqual(4);
    expect(said.length).toBeLessThanOrEqual(6);
  });

  it('is silent when switched off, and while the meter is', () => {
    expect(spoken(() => meter('8.92'), 3, 'off')).toEqual([]);
    expect(spoken(() => meter('', { function: 'off' }), 3)).toEqual([]);
  });

  it('says over range and the coming of the continuity tone', () => {
    expect(spoken(() => meter('OL'), 3)).toEqual(['0.5 over-range OL']);
    const said = spoken((s) => meter(s < 1 ? 'OL' : '0.4', { function: 'continuity', tone: s >= 1 }), 2);
    expect(said).toContain('1.0 tone-on 0.4');
  });

  it('counts in the last digit shown', () => {
    expect(withinOneCount('8.92', '8.93')).toBe(true);
    expect(withinOneCount('8.92', '8.94')).toBe(false);
    expect(withinOneCount('0.4', '0.45')).toBe(false);
    expect(withinOneCount('OL', '0.1')).toBe(false);
  });
});

describe('single letters', () => {
  const press = (key: string, extra = {}) =>
    shortcutOf({ key, ctrlKey: false, altKey: false, metaKey: false, ...extra });
  it('mean what the list says, in either case, and leave the browser its own', () => {
    expect(press('l')).toBe('log');
    expect(press('L')).toBe('log');
    expect(press('?')).toBe('help');
    expect(press('x')).toBeNull();
    expect(press('l', { ctrlKey: true })).toBeNull();
  });

  it('are letters and no shortcuts where one writes, and nowhere else', () => {
    const on = (tagName: string, type?: string, isContentEditable = false): boolean =>
      takesLetters({ tagName, isContentEditable, ...(type === undefined ? {} : { type }) });
    expect(['text', 'search', 'number', undefined].every((type) => on('INPUT', type))).toBe(true);
    expect(on('TEXTAREA') && on('SELECT') && on('P', undefined, true)).toBe(true);
    expect(['radio', 'checkbox', 'range'].some((type) => on('INPUT', type))).toBe(false);
    expect(['BODY', 'BUTTON', 'DIV', 'A'].some((tag) => on(tag))).toBe(false);
  });
});
