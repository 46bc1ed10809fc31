import { describe, expect, it } from 'vitest';
import { closingLine, countBrowserReport, countCheck, countUnitReport, sumCounts } from './counts.mjs';

const passed = { status: 'passed' };
const failed = { status: 'failed' };
const skipped = { status: 'skipped' };
const file = (name: string, status: string, ...assertionResults: readonly { status: string }[]) => ({
  name: `/any/where/${name}`,
  status,
  assertionResults,
});

describe('counting unit tests', () => {
  it('counts tests, and leaves out what was skipped', () => {
    const report = { testResults: [file('a.test.ts', 'passed', passed, passed, skipped)] };
    expect(countUnitReport(report, 0)).toEqual({ passed: 2, failed: 0, remarks: [] });
  });

  it('counts failed tests', () => {
    const report = { testResults: [file('a.test.ts', 'failed', passed, failed, failed)] };
    expect(countUnitReport(report, 1)).toMatchObject({ passed: 1, failed: 2 });
  });

  it('counts a file that could not be loaded as failed', () => {
    const report = { testResults: [file('a.test.ts', 'passed', passed), file('b.test.ts', 'failed')] };
    expect(countUnitReport(report, 1)).toMatchObject({ passed: 1, failed: 1 });
  });

  it('counts a run without tests, or without a report, as failed', () => {
    expect(countUnitReport({ testResults: [] }, 0)).toMatchObject({ passed: 0, failed: 1 });
    expect(countUnitReport(null, 1)).toMatchObject({ passed: 0, failed: 1 });
    expect(countUnitReport({ testResults: [file('a.test.ts', 'passed', skipped)] }, 0)).toMatchObject({
      failed: 1,
    });
  });

  it('counts an error outside every test as failed', () => {
    const report = { testResults: [file('a.test.ts', 'passed', passed)] };
    expect(countUnitReport(report, 1)).toMatchObject({ passed: 1, failed: 1 });
  });

  it('counts a required folder in which nothing ran as failed', () => {
    const report = {
      testResults: [
        file('tests/laws/a.test.ts', 'passed', passed),
        file('tests/golden/b.test.ts', 'passed', skipped),
      ],
    };
    const count = countUnitReport(report, 0, ['tests/laws', 'tests/golden']);
    expect(count).toEqual({ passed: 1, failed: 1, remarks: ['no test ran in tests/golden'] });
  });
});

describe('counting browser tests', () => {
  it('counts a test that needed a second try as failed', () => {
    const report = { stats: { expected: 5, unexpected: 1, flaky: 1, skipped: 2 } };
    expect(countBrowserReport(report, 1)).toMatchObject({ passed: 5, failed: 2 });
  });

  it('counts a run without tests, or one that broke, as failed', () => {
    expect(countBrowserReport({ stats: { expected: 0, unexpected: 0, flaky: 0 } }, 0)).toMatchObject({
      failed: 1,
    });
    expect(countBrowserReport(null, 1)).toMatchObject({ passed: 0, failed: 1 });
    expect(countBrowserReport({ stats: { expected: 5, unexpected: 0, flaky: 0 } }, 1)).toMatchObject({
      failed: 1,
    });
  });
});

describe('the sum', () => {
  it('adds all stages and closes with one line', () => {
    const sum = sumCounts([countCheck(0), countCheck(2), { passed: 40, failed: 3, remarks: [] }]);
    expect(closingLine(sum)).toBe('41 passed, 4 failed');
  });
});
