/** `npm start`: install, build, serve the built app on this machine until it is stopped. */
import './checkNode.mjs';
import { ensureInstalled, InstallError, ROOT } from './install.mjs';

const USUAL_PORT = 4173;
const PARENT_CHECK_MS = 500;

try {
  const port = wantedPort(process.env.PORT);
  ensureInstalled();
  await serve(port);
} catch (error) {
  console.error(error instanceof InstallError ? error.message : error);
  process.exitCode = 1;
}

function wantedPort(text) {
  if (text === undefined || text === '') return USUAL_PORT;
  const port = Number(text);
  if (Number.isInteger(port) && port > 0 && port < 65536) return port;
  throw new InstallError(`PORT is "${text}"; it has to be a whole number from 1 to 65535.`);
}

async function serve(port) {
  // What it says of a loader to come is for who works on the program, not for who starts it.
  process.env.VITE_CONFIG_NATIVE_IGNORE_WARNING ??= 'true';
  // Only now: before the install there is no vite to import.
  const { build, preview } = await import('vite');
  await build({ root: ROOT, logLevel: 'warn' });
  const server = await preview({ root: ROOT, logLevel: 'warn', preview: { port, strictPort: false, open: false } });
  const stop = () => {
    server.httpServer.closeAllConnections?.();
    server.httpServer.close(() => process.exit(0));
  };
  process.once('SIGINT', stop);
  stopWithNpm(stop);
  process.once('SIGTERM', stop);
  console.log(`Pitchboard is open at http://localhost:${server.httpServer.address().port}/`);
  console.log('Press Ctrl-C to stop.');
}

/**
 * A signal that is sent to npm alone ends npm and the shell between, but never reaches this
 * process: it would hold the port for ever. So it ends when the one that started it is gone.
 */
function stopWithNpm(stop) {
  if (process.env.npm_lifecycle_event !== 'start') return;
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) stop();
  }, PARENT_CHECK_MS).unref();
}
