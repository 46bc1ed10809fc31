export const NO_BROWSER: string;
export function findBrowser(
  env?: Readonly<Record<string, string | undefined>>,
  platform?: string,
): string | null;
export function findOrInstallBrowser(): string | null;
