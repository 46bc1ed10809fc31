import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wav': 'audio/wav',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/**
 * The plainest file server there is, with the program under a path of its own. What it serves can be changed while a page is open,
 * as when a school puts a new version in place, and it can be gone.
 */
export class PlainServer {
  private constructor(
    private readonly server: Server,
    private readonly path: string,
    public folder: string,
  ) {}

  static async serve(folder: string, host = '127.0.0.1', path = '/shop/bench/'): Promise<PlainServer> {
    const server = createServer();
    const plain = new PlainServer(server, path, folder);
    server.on('request', ({ url = '/' }, response) => {
      const asked = decodeURIComponent(url.split('?')[0] ?? '');
      const file = asked.startsWith(path) ? normalize(join(plain.folder, asked.slice(path.length))) : '';
      const found =
        file !== '' && existsSync(file) && statSync(file).isDirectory() ? join(file, 'index.html') : file;
      if (!found.startsWith(plain.folder) || !existsSync(found)) {
        response.writeHead(404).end();
        return;
      }
      response.writeHead(200, {
        'Content-Type': TYPES[extname(found)] ?? 'application/octet-stream',
        // As many servers answer, and what makes a kept answer look like that to another question.
        Vary: 'Origin, Accept-Encoding',
      });
      createReadStream(found).pipe(response);
    });
    await new Promise<void>((resolve) => server.listen(0, host, resolve));
    return plain;
  }

  get address(): string {
    const { address, port } = this.server.address() as AddressInfo;
    return `http://${address}:${port}${this.path}`;
  }

  /** The server is gone for good, with every line that is open. */
  async stop(): Promise<void> {
    if (!this.server.listening) return;
    this.server.closeAllConnections();
    await new Promise((resolve) => this.server.close(resolve));
  }
}
