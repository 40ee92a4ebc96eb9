import { join } from 'node:path';
import { ensureInstalled, root } from './install.mjs';

const { PORT = '4173' } = process.env;
const wanted = Number(PORT);

// npm ends the shell between itself and this process, not this process: gone with it, the port is free again.
const { ppid: parent } = process;
setInterval(() => process.ppid !== parent && process.exit(), 500).unref();

try {
  console.log('Sumstitch: installing what is missing, then building.');
  ensureInstalled();
  await serve();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

async function serve() {
  // Not at the top: on a fresh machine it is only there once the install above is done.
  const { build, preview } = await import('vite');
  const configFile = join(root, 'vite.config.ts');
  await build({ configFile, logLevel: 'warn' });
  const server = await preview({ configFile, preview: { port: wanted }, logLevel: 'warn' });
  const address = server.httpServer.address();
  const port = address !== null && typeof address === 'object' ? address.port : wanted;
  if (port !== wanted) {
    console.log(
      `Port ${wanted} is taken, so this runs on ${port}. A browser keeps records by address: ` +
        `what was recorded at ${wanted} is still there, and only there.`,
    );
  }
  console.log(`\nSumstitch is at http://127.0.0.1:${port}/\n\nCtrl+C stops it.`);
}
