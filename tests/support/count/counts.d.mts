export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly remarks: readonly string[];
}
export function countUnitReport(
  report: unknown,
  exitCode: number,
  requiredFolders?: readonly string[],
): Count;
export function countBrowserReport(report: unknown, exitCode: number): Count;
export function countCheck(exitCode: number): Count;
export function sumCounts(counts: readonly Count[]): { passed: number; failed: number };
export function closingLine(sum: { readonly passed: number; readonly failed: number }): string;
