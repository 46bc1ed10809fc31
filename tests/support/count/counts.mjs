// Plain counts of what passed and failed, from the JSON reports of the two test runners. Plain JavaScript: read before any package is there.

/** @typedef {{ passed: number, failed: number, remarks: string[] }} Count */

/**
 * Counts a Vitest JSON report. Errors count as failed: a file that would not load, an error outside every test, a run
 * without tests, a required folder in which no test ran.
 * @param {any} report parsed report, or null when none was written
 * @param {number} exitCode of the run
 * @param {readonly string[]} requiredFolders paths such as 'tests/laws' in which at least one test must have run
 * @returns {Count}
 */
export function countUnitReport(report, exitCode, requiredFolders = []) {
  const files = report?.testResults ?? [];
  const remarks = [];
  let passed = 0;
  let failed = 0;
  for (const file of files) {
    const outcomes = (file.assertionResults ?? []).map((test) => test.status);
    passed += outcomes.filter((outcome) => outcome === 'passed').length;
    const failedHere = outcomes.filter((outcome) => outcome === 'failed').length;
    failed += failedHere;
    if (file.status === 'failed' && failedHere === 0) {
      failed += 1;
      remarks.push(`${file.name} could not be run`);
    }
  }
  for (const folder of requiredFolders) {
    const ran = files.some((file) => inFolder(file.name, folder) && file.assertionResults?.some(didRun));
    if (ran) continue;
    failed += 1;
    remarks.push(`no test ran in ${folder}`);
  }
  return settle(passed, failed, exitCode, remarks);
}

/**
 * Counts a Playwright JSON report; a test that passed only on a second try counts as failed.
 * @param {any} report parsed report, or null when none was written
 * @param {number} exitCode of the run
 * @returns {Count}
 */
export function countBrowserReport(report, exitCode) {
  const stats = report?.stats ?? { expected: 0, unexpected: 0, flaky: 0 };
  const failed = stats.unexpected + stats.flaky;
  return settle(stats.expected, failed, exitCode, []);
}

/**
 * A stage that either passes or does not.
 * @param {number} exitCode
 * @returns {Count}
 */
export function countCheck(exitCode) {
  return exitCode === 0 ? { passed: 1, failed: 0, remarks: [] } : { passed: 0, failed: 1, remarks: [] };
}

/**
 * @param {readonly Count[]} counts
 * @returns {{ passed: number, failed: number }}
 */
export function sumCounts(counts) {
  const sum = { passed: 0, failed: 0 };
  for (const { passed, failed } of counts) {
    sum.passed += passed;
    sum.failed += failed;
  }
  return sum;
}

/**
 * The closing line.
 * @param {{ passed: number, failed: number }} sum
 */
export function closingLine(sum) {
  return `${sum.passed} passed, ${sum.failed} failed`;
}

function settle(passed, failed, exitCode, remarks) {
  if (failed > 0) return { passed, failed, remarks };
  if (passed === 0) return { passed, failed: 1, remarks: [...remarks, 'no test ran'] };
  if (exitCode !== 0)
    return { passed, failed: 1, remarks: [...remarks, `the run ended with code ${exitCode}`] };
  return { passed, failed, remarks };
}

function inFolder(path, folder) {
  return path.replaceAll('\\', '/').includes(`/${folder}/`);
}

function didRun(test) {
  return test.status === 'passed' || test.status === 'failed';
}
