/** A host for one test: it can be stopped, given a newer version, or turned into somebody's network that answers everything. */

import { createHash } from 'node:crypto';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const BUILT = fileURLToPath(new URL('../../dist', import.meta.url));
const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

export type Mood = 'serves' | 'is gone' | 'wants a password';

export interface OwnHost {
  readonly address: string;
  /** Requests since the start. */
  readonly asked: readonly string[];
  become(mood: Mood): void;
  /** Another version, whose page has this in its title. */
  bringOut(title: string): Promise<void>;
  /** A file that does not come as it was built. */
  tear(path: string): Promise<void>;
  close(): Promise<void>;
}

export async function startHost(): Promise<OwnHost> {
  const folder = await mkdtemp(join(tmpdir(), 'pitchboard-host-'));
  await cp(BUILT, folder, { recursive: true });
  let mood: Mood = 'serves';
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://host.invalid').pathname;
    asked.push(path);
    if (mood === 'is gone') {
      response.destroy();
      return;
    }
    if (mood === 'wants a password') {
      response.writeHead(200, { 'content-type': 'text/html' }).end('<title>Welcome</title><p>Sign in to this network.');
      return;
    }
    const name = path === '/' ? 'index.html' : path.slice(1);
    readFile(join(folder, name)).then(
      (bytes) =>
        response.writeHead(200, { 'content-type': KINDS[extname(name)] ?? 'application/octet-stream' }).end(bytes),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, 'localhost', resolve));
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}/`,
    asked,
    become(next) {
      mood = next;
      server.closeAllConnections();
    },
    async bringOut(title) {
      const [page, worker] = [join(folder, 'index.html'), join(folder, 'offline.js')];
      const before = await readFile(page);
      const after = Buffer.from(
        before
          .toString()
          .replace(/<meta name="description" content="[^"]*"/, `<meta name="description" content="${title}"`),
      );
      const text = await readFile(worker, 'utf8');
      const next = text.replace(sumOf(before), sumOf(after)).replace(/version:`[^`]*`/, `version:\`${title}\``);
      if (next === text || before.equals(after)) throw new Error('No newer version was made');
      await Promise.all([writeFile(page, after), writeFile(worker, next)]);
    },
    async tear(path) {
      const whole = await readFile(join(folder, path));
      await writeFile(join(folder, path), whole.subarray(0, whole.length - 9));
    },
    async close() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await rm(folder, { recursive: true, force: true });
    },
  };
}

function sumOf(bytes: Buffer): string {
  return createHash('sha256').update(bytes).digest('base64');
}
