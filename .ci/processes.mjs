// Child processes that never outlive the command: each runs in a process group of its own, and the whole group is ended.
import { spawn, spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { setPriority } from 'node:os';

const running = new Set();
const onPosix = process.platform !== 'win32';

/** Starts a program in a group of its own. Its output goes where ours goes unless `options.stdio` says otherwise. */
export function start(program, args, options = {}) {
  const child = spawn(program, args, {
    stdio: ['ignore', 'inherit', 'inherit'],
    detached: onPosix,
    ...options,
  });
  running.add(child);
  child.once('close', () => running.delete(child));
  child.once('error', () => running.delete(child));
  return child;
}

/** Runs a program to its end. Gives its exit code; 127 when it could not be started, 1 when a signal ended it. */
export function run(program, args, options = {}) {
  return ended(program, start(program, args, options));
}

/** As `run`, with what the machine has left over beside the others; its output goes to `take`, piece by piece. */
export function runBehind(program, args, take, options = {}) {
  const child = start(program, args, { ...options, stdio: ['ignore', 'pipe', 'pipe'] });
  giveWay(child);
  child.stdout?.on('data', take);
  child.stderr?.on('data', take);
  return ended(program, child);
}

function ended(program, child) {
  return new Promise((resolve) => {
    child.once('error', (error) => {
      process.stderr.write(`${program} could not be started: ${error.message}\n`);
      resolve(127);
    });
    child.once('close', (code) => resolve(code ?? 1));
  });
}

// Not the last of all: a stage that waits too long for its turn is taken for dead.
const BEHIND = 10;

/** Lets everything else go first, before a child and what it starts. Where the system does not let us, it goes on as it is. */
function giveWay({ pid }) {
  if (pid === undefined) return;
  try {
    setPriority(pid, BEHIND);
    // Linux shares the processor out by group before it looks at any program's own priority.
    if (process.platform === 'linux') writeFileSync(`/proc/${pid}/autogroup`, String(BEHIND));
  } catch {
    // No such group, or it has ended already.
  }
}

/** Ends a child and everything it started. */
export function endGroup(child, signal = 'SIGTERM') {
  if (child.pid === undefined) return;
  try {
    if (onPosix) process.kill(-child.pid, signal);
    else spawnSync('taskkill', ['/pid', String(child.pid), '/T', '/F']);
  } catch {
    // The group is already gone.
  }
}

/** Ends every group that is running when this program is told to stop, then leaves with the usual code (128 + number). */
export function endGroupsOnSignals() {
  const numbers = { SIGINT: 2, SIGTERM: 15, SIGHUP: 1 };
  for (const [signal, number] of Object.entries(numbers)) {
    process.once(signal, () => leave(signal, 128 + number));
  }
  // npm stops the shell between itself and this program, and that shell does not pass the signal on.
  if (process.env.npm_lifecycle_event !== undefined && onPosix) {
    const parent = process.ppid;
    setInterval(() => process.ppid !== parent && leave('SIGTERM', 143), 500).unref();
  }
  process.once('exit', () => {
    for (const child of running) endGroup(child, 'SIGKILL');
  });
}

/** A moment of grace after the signal, then the end. */
function leave(signal, exitCode) {
  for (const child of running) endGroup(child, signal);
  setTimeout(() => process.exit(exitCode), 300);
}
