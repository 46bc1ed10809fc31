/** Where the built program is served during the browser tests: another port lets two runs stand on one machine. */
export const E2E_PORT = Number(process.env['KNOWN_GOOD_E2E_PORT'] ?? 4317);
export const E2E_ADDRESS = `http://127.0.0.1:${E2E_PORT}/`;
