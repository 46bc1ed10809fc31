import { describe, expect, it } from 'vitest';
import { tests } from '../../src/cli/tests.ts';
import { SET_UPS } from '../../src/sim/rigs/standardTests/setUps.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import { catalogue } from '../../src/text/en/catalogue.ts';
import { standardProcedure } from '../../src/text/standardProcedure.ts';
import { inShownUnits } from '../../src/text/units.ts';

const written = STANDARD_TESTS.map((test) => standardProcedure(test, SET_UPS[test.prepares]));
type Caution = keyof typeof catalogue.serviceTools.cautionLines;
const cautionLines = Object.fromEntries(
  Object.entries(catalogue.serviceTools.cautionLines).map(([key, line]) => [key, inShownUnits(line)]),
) as Record<Caution, string>;

describe('the written procedures', () => {
  it('have a name each, and one line of what it proves', () => {
    expect(new Set(written.map(({ name }) => name)).size).toBe(STANDARD_TESTS.length);
    for (const { proves } of written) expect(proves).toMatch(/^[A-Z3].*\.$/);
  });

  it('are sentences without gaps and without names of the program', () => {
    const lines = written.flatMap(({ setUp, work, undo }) => [...setUp, ...work, ...undo]);
    expect(lines.length).toBeGreaterThan(800);
    // Two small words joined by a hyphen are a name of the program, but for the trade's own.
    const odd = lines.filter(
      (line) => !/^ *[A-Z1-9].*[.:]$/.test(line) || /\{\{|undefined|[a-z]+-[a-z]/.test(line),
    );
    expect(odd.filter((line) => !/back-probe|over-tight/.test(line))).toEqual([]);
  });

  it('say the cautions that go with the work, and with every test that service information comes first', () => {
    const cautions = (id: string): readonly string[] =>
      written[STANDARD_TESTS.findIndex((test) => test.id === id)]?.cautions ?? [];
    for (const { cautions: lines } of written) expect(lines.at(-1)).toBe(cautionLines.first);
    expect(cautions('smoke-vessel-alone')).toEqual(
      expect.arrayContaining([cautionLines.smoke, cautionLines.tank]),
    );
    expect(cautions('jumper-clicks')).toEqual(
      expect.arrayContaining([cautionLines.sparks, cautionLines.plug, cautionLines.sense]),
    );
    expect(cautions('hold-capped')).toContain(cautionLines.unit);
    expect(cautions('coil-ohms')).toContain(cautionLines.ohms);
    expect(cautions('sense-at-plug')).toContain(cautionLines.probe);
    expect(cautions('codes-and-freeze-data')).toEqual([cautionLines.first]);
  });
});

/** What the command writes. */
function known(...names: readonly string[]): { code: number; out: string; err: string } {
  const out: string[] = [];
  const err: string[] = [];
  const code = tests(
    { files: names, json: names.length === 0, options: {}, flags: [] },
    { out: (text) => out.push(text), err: (text) => err.push(text) },
  );
  return { code, out: out.join('\n'), err: err.join('\n') };
}

describe('known-good tests', () => {
  it('gives every test with its minutes, money and procedure as JSON', () => {
    const { code, out } = known();
    const list: readonly { id: string; minutes: number; money: number }[] = JSON.parse(out);
    expect(code).toBe(0);
    expect(list.map(({ id }) => id)).toEqual(STANDARD_TESTS.map(({ id }) => id));
    for (const { minutes, money } of list) expect([minutes > 0, money >= 0]).toEqual([true, true]);
  });

  it('prints the procedures of those named, and knows no others', () => {
    const { code, out } = known('trip-and-reset', 'coil-ohms');
    expect(code).toBe(0);
    expect(out).toContain('Pump with small strokes until the reader says the switch is closed');
    expect(out).toContain('Meter: red on unit half, terminal 1, black on unit half, terminal 2');
    expect(known('no-such-test')).toMatchObject({ code: 2, out: '' });
    expect(known('no-such-test').err).toContain('"no-such-test"');
  });
});
