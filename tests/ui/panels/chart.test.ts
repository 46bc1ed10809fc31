import type uPlot from 'uplot';
import { describe, expect, it } from 'vitest';
import { twoCurves } from '../../../src/ui/panels/chart.ts';

const INK = { ink: '#000', grid: '#000', live: '#000', vacuum: '#000', font: '13px serif', letters: 16 };
const CURVES = {
  width: 300,
  height: 150,
  voltsLabel: 'V',
  vacuumLabel: 'P',
  vacuumUnit: 'inHg',
  vacuumSpan: 5,
};
const made = twoCurves({ ...CURVES, ink: INK });
const NO_PLOT = {} as uPlot;

describe('the numbers of a chart', () => {
  it('are written by the page at both axes, not by the library in the language of the device', () => {
    for (const axis of made.axes?.slice(1) ?? []) {
      const values = axis.values as unknown as (u: uPlot, marks: readonly number[]) => readonly string[];
      expect(values(NO_PLOT, [0, 2.5, 10])).toEqual(['0', '2.5', '10']);
    }
    expect(made.axes).toHaveLength(3);
  });

  it('are as fine in the legend as the instruments, and nothing where a curve is broken', () => {
    const legend = made.series
      .slice(1)
      .map(({ value }) => value as (u: uPlot, height: number | null) => string);
    expect(legend.map((value) => value(NO_PLOT, 8.98765))).toEqual(['8.99', '9.0']);
    expect(legend.map((value) => value(NO_PLOT, null))).toEqual(['–', '–']);
  });
});
