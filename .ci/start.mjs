// npm start: sets up what is missing, builds, serves the build, and prints the address as its last line.
import { createServer } from 'node:net';
import { build, buildIsStale, VITE } from './build.mjs';
import { endGroup, endGroupsOnSignals, start } from './processes.mjs';
import { ensurePackages, giveUp, nodeComplaint, ROOT } from './setup.mjs';

const HOST = '127.0.0.1';
const FIRST_PORT = 4173;
const PORTS_TRIED = 50;
const START_LIMIT_MS = 30_000;

const complaint = nodeComplaint();
if (complaint !== null) giveUp(complaint, 2);
endGroupsOnSignals();
await ensurePackages();
if (buildIsStale()) {
  process.stdout.write('Building …\n');
  if ((await build()) !== 0) giveUp('The build failed, see above.', 1);
}
await serve(await choosePort());

/** PORT when it is set and free; without it the first free port from 4173 up. */
async function choosePort() {
  const asked = process.env.PORT;
  if (asked) {
    const port = Number(asked);
    if (!Number.isInteger(port) || port < 1 || port > 65_535)
      giveUp(`PORT is set to ${asked}, which is not a port number.`, 2);
    if (!(await isFree(port)))
      giveUp(`Port ${port} is in use. Set PORT to another one, or leave it unset.`, 2);
    return port;
  }
  for (let port = FIRST_PORT; port < FIRST_PORT + PORTS_TRIED; port++) {
    if (await isFree(port)) return port;
  }
  return giveUp(
    `No free port from ${FIRST_PORT} to ${FIRST_PORT + PORTS_TRIED - 1}. Set PORT to a free one.`,
    2,
  );
}

function isFree(port) {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', () => resolve(false));
    probe.listen(port, HOST, () => probe.close(() => resolve(true)));
  });
}

async function serve(port) {
  const address = `http://${HOST}:${port}/`;
  const server = start(
    process.execPath,
    [VITE, 'preview', '--host', HOST, '--port', String(port), '--strictPort'],
    {
      cwd: ROOT,
      // Its own greeting is swallowed so that the address below is the last line.
      stdio: ['ignore', 'ignore', 'inherit'],
    },
  );
  server.once('close', (code) => giveUp('The server has stopped.', code ?? 1));
  server.once('error', (error) => giveUp(`The server could not be started: ${error.message}`, 1));
  if (!(await answersWithin(address, START_LIMIT_MS))) {
    endGroup(server);
    giveUp(`The server did not answer at ${address} within ${START_LIMIT_MS / 1000} seconds.`, 1);
  }
  process.stdout.write(`\nKnown Good is ready. Stop it with Ctrl-C.\n${address}\n`);
}

async function answersWithin(address, limitMs) {
  const deadline = Date.now() + limitMs;
  while (Date.now() < deadline) {
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return true;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return false;
}
