import { describe, expect, it } from 'vitest';
import { controlName } from '../../../src/ui/mirror/controlName.ts';
import { MIRROR_GROUPS, mirrorSections } from '../../../src/ui/mirror/mirrorGroups.ts';
import { rovedIndex } from '../../../src/ui/interaction/rovingFocus.ts';
import { typeahead } from '../../../src/ui/mirror/typeahead.ts';
import { WorldBench } from '../../support/worldBench.ts';

describe('the controls over the bench', () => {
  const seen = new WorldBench().world.observe();

  it('stand in the order of the job, each once, each with a name of its own', () => {
    const sections = mirrorSections(seen);
    expect(sections.map(({ group }) => group)).toEqual([...MIRROR_GROUPS]);
    const names = sections.flatMap(({ controls }) => controls.map(({ name }) => name));
    expect(names.length).toBeGreaterThan(40);
    for (const { controls } of sections) {
      expect(new Set(controls.map(({ name }) => name)).size).toBe(controls.length);
    }
    expect(names.filter((name) => name.includes('{{') || name.trim() === '')).toEqual([]);
  });

  it('tell how things stand', () => {
    const bench = new WorldBench().senseWatched();
    const now = bench.world.observe();
    expect(controlName('end:meter-red', now)).toBe('Red lead, on cavity 3 wire side');
    expect(controlName('end:meter-red', seen)).toBe('Red lead, loose on the mat');
    expect(controlName('point:cavity-3-back', now)).toBe('Cavity 3 wire side, red lead here');
    expect(controlName('lcd', now)).toMatch(/^Meter shows [89]\.\d\d volts$/);
    expect(controlName('gauge', now)).toBe('Gauge, about 0 inHg');
    expect(controlName('clamp:air-port', now)).toBe('Clamp at the air port, hand tight');
  });

  it('hide what cannot be reached', () => {
    const ids = (bench: WorldBench) =>
      mirrorSections(bench.world.observe()).flatMap(({ controls }) => controls.map(({ id }) => id));
    expect(ids(new WorldBench())).not.toContain('point:unit-1');
    expect(ids(new WorldBench().do({ kind: 'part-plug' }))).toContain('point:unit-1');
  });

  it('have one chosen radio in each radio group', () => {
    for (const { group, controls } of mirrorSections(seen)) {
      if (group !== 'key' && group !== 'selector') continue;
      expect(controls.filter(({ on }) => on === true)).toHaveLength(1);
    }
  });
});

describe('keys inside a group and a list', () => {
  it('go round with the arrows', () => {
    expect(rovedIndex('ArrowRight', 2, 3)).toBe(0);
    expect(rovedIndex('ArrowUp', 0, 3)).toBe(2);
    expect(rovedIndex('End', 0, 3)).toBe(2);
    expect(rovedIndex('Tab', 0, 3)).toBeNull();
  });

  it('find an option by its letters', () => {
    const options = ['Battery positive', 'Battery negative', 'Fuse, battery side', 'Cavity 3 wire side'];
    expect(typeahead(options, 'b', 0)).toBe(1);
    expect(typeahead(options, 'b', 1)).toBe(0);
    expect(typeahead(options, 'battery n', 0)).toBe(1);
    expect(typeahead(options, '3', 0)).toBe(3);
    expect(typeahead(options, 'x', 0)).toBeNull();
  });
});
