const TOP_LEVEL = [
  ...[
    'README.md',
    'DEVELOPERS.md',
    'LICENSE',
    'index.html',
    'package.json',
    'package-lock.json',
    'vite.config.ts',
  ],
  ...['biome.json', '.gitignore', '.ci', 'src', 'assets', 'scenarios', 'tests'],
];
const TOP_LEVEL_PATTERN = /^tsconfig(\.[a-z]+)?\.json$/;

/** Names at the top of the repository that have no business there. */
export function checkTopLevel(paths: readonly string[]): readonly string[] {
  const tops = new Set(paths.map((path) => path.split('/')[0] ?? ''));
  return [...tops].filter((top) => !TOP_LEVEL.includes(top) && !TOP_LEVEL_PATTERN.test(top));
}

/**
 * Text that ties a file to one machine. Each pattern is written so that it does not match itself. The end of a folder's
 * name is asked for, so that addresses of pages and routes do not count.
 */
const TIES: readonly (readonly [string, RegExp])[] = [
  ['a folder of one machine', /(?<![\w.:/])\/(?:home|root|Users|work|tmp|var\/folders)\/[\w.-]+/],
  ['a folder of one machine', /[A-Z]:\\Users\\\w+/],
  [
    'the host of a package registry',
    /\/\/(?:[\w-]+\.)*(?:registry|npm|packages|artifactory|nexus|verdaccio)\.[\w.-]+/i,
  ],
  ['a setting for a package registry', /(?:^|[\s"'@:])registry\s*=/m],
  ['where a package was fetched from', /"resolved"\s*:\s*"/],
  ['an address in a private network', /\/\/(?:10|192\.168|172\.(?:1[6-9]|2\d|3[01]))(?:\.\d+)+/],
];

/** Breaches in one kept text file, one line each. */
export function checkTies(path: string, text: string): readonly string[] {
  return TIES.flatMap(([what, pattern]) => {
    const match = pattern.exec(text);
    return match === null ? [] : [`${path}:${text.slice(0, match.index).split('\n').length}: ${what}`];
  });
}

/** Packages in package.json whose version is not one exact number. */
export function checkVersions(packageJson: string): readonly string[] {
  const parsed = JSON.parse(packageJson) as Record<string, Record<string, string> | undefined>;
  const fields = ['dependencies', 'devDependencies', 'peerDependencies', 'optionalDependencies'];
  const all = fields.flatMap((field) => Object.entries(parsed[field] ?? {}));
  return all
    .filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version))
    .map(([name, version]) => `${name}: ${version}`);
}
