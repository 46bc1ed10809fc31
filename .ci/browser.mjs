// Finds a Chromium-family browser for the end-to-end tests, or says in one line what to install.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { delimiter, join } from 'node:path';

const NAMES_ON_PATH = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  'microsoft-edge',
];

export const NO_BROWSER =
  'No Chromium or Chrome was found. Install one (on Debian or Ubuntu: sudo apt-get install chromium), or set KNOWN_GOOD_BROWSER to its program file.';

/** Path of the browser to use, or null. Errors: throws one line when KNOWN_GOOD_BROWSER names something that is not there. */
export function findBrowser(env = process.env, platform = process.platform) {
  const asked = env.KNOWN_GOOD_BROWSER;
  if (asked) {
    if (isProgram(asked)) return asked;
    throw new Error(`KNOWN_GOOD_BROWSER is set to ${asked}, but no program is there.`);
  }
  for (const path of [
    ...onPath(env, platform),
    ...usualPlaces(env, platform),
    ...downloadedBefore(env, platform),
  ]) {
    if (isProgram(path) && answers(path, platform)) return path;
  }
  return null;
}

/** As `findBrowser`, but on Debian and Ubuntu as root installs the distribution's package when there is none. */
export function findOrInstallBrowser() {
  const found = findBrowser();
  if (found !== null || !mayInstall()) return found;
  process.stdout.write(
    'No Chromium found; installing the distribution’s package (apt-get install chromium) …\n',
  );
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const options = { env, stdio: ['ignore', 'inherit', 'inherit'] };
  spawnSync('apt-get', ['update'], options);
  spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], options);
  return findBrowser();
}

function mayInstall() {
  return (
    process.platform === 'linux' &&
    process.getuid?.() === 0 &&
    onPathNamed('apt-get', process.env).some(isProgram)
  );
}

function onPath(env, platform) {
  const suffix = platform === 'win32' ? '.exe' : '';
  return NAMES_ON_PATH.flatMap((name) => onPathNamed(name + suffix, env));
}

function onPathNamed(name, env) {
  const folders = (env.PATH ?? env.Path ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, name));
}

function usualPlaces(env, platform) {
  if (platform === 'darwin') {
    const programs = ['Google Chrome', 'Chromium', 'Microsoft Edge'];
    return ['/Applications', join(homedir(), 'Applications')].flatMap((folder) =>
      programs.map((program) => join(folder, `${program}.app`, 'Contents', 'MacOS', program)),
    );
  }
  if (platform === 'win32') {
    const programs = [
      'Google\\Chrome\\Application\\chrome.exe',
      'Chromium\\Application\\chrome.exe',
      'Microsoft\\Edge\\Application\\msedge.exe',
    ];
    const folders = [env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA].filter(Boolean);
    return folders.flatMap((folder) => programs.map((program) => join(folder, program)));
  }
  return ['/snap/bin/chromium', '/opt/google/chrome/chrome', '/usr/lib/chromium/chromium'];
}

/** A Chromium that Playwright downloaded earlier for some other project, newest first. */
function downloadedBefore(env, platform) {
  const cache = {
    linux: join(homedir(), '.cache', 'ms-playwright'),
    darwin: join(homedir(), 'Library', 'Caches', 'ms-playwright'),
    win32: join(env.LOCALAPPDATA ?? homedir(), 'ms-playwright'),
  }[platform];
  const folder = env.PLAYWRIGHT_BROWSERS_PATH ?? cache;
  if (folder === undefined || !existsSync(folder)) return [];
  const inside = {
    linux: ['chrome-linux64/chrome', 'chrome-linux/chrome'],
    darwin: ['chrome-mac/Chromium.app/Contents/MacOS/Chromium'],
    win32: ['chrome-win64/chrome.exe', 'chrome-win/chrome.exe'],
  }[platform];
  const builds = readdirSync(folder).filter((name) => /^chromium-\d+$/.test(name));
  builds.sort((a, b) => Number(b.slice(9)) - Number(a.slice(9)));
  return builds.flatMap((build) => (inside ?? []).map((path) => join(folder, build, path)));
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Some distributions leave a script of this name that only says where to get the browser. On Windows asking would open a window. */
function answers(path, platform) {
  if (platform === 'win32') return true;
  return spawnSync(path, ['--version'], { timeout: 20_000, stdio: 'ignore' }).status === 0;
}
