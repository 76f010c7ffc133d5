// @ts-check
// npm start: from a bare clone to a running Pawl. Nothing but Node's own modules until the packages are installed.
import path from 'node:path';
import { checkNode, install } from './start/install.mjs';
import { endLeftovers, forgetRun, rememberRun } from './start/leftovers.mjs';
import { chooseAddress, makeDataFolder } from './start/place.mjs';
import { step } from './start/progress.mjs';
import { keepSecret } from './start/secret.mjs';
import { onStop, stopping } from './start/stop.mjs';
import { checkPort, startWeb, untilHealthy } from './start/web.mjs';

const root = path.dirname(import.meta.dirname);

async function start() {
  checkNode();
  const address = chooseAddress(process.env);
  const dataFolder = makeDataFolder(root);
  await endLeftovers(dataFolder);
  await checkPort(address);
  rememberRun(dataFolder, address.url, null);
  onStop(() => forgetRun(dataFolder));

  await step('Packages', () => install(root));
  const { generateClient } = await import('./start/generate.mjs');
  const { migrate, openDatabase } = await import('./start/database.mjs');
  const { demoSignIn, loadDemo } = await import('./start/demo.mjs');
  const { buildPages } = await import('./start/build.mjs');

  const secret = keepSecret(dataFolder);
  await step('Database client', () => generateClient(root));
  const opening = step('Database', () => openDatabase(root, dataFolder));
  // Named before it is open: a stop in between must end it too.
  onStop(async () => {
    const opened = await opening.catch(() => null);
    await opened?.server?.stop();
  });
  const { server, url } = await opening;
  await step('Migrations', () => migrate(root, url));
  if (server) await step('Demo club', () => loadDemo(root, dataFolder, url));
  await step('Pages', () => buildPages(root));

  const web = await step('Service', async () => {
    const env = {
      DATABASE_URL: url,
      NEXTAUTH_SECRET: secret,
      AUTH_TRUST_HOST: 'true',
      PAWL_DATA: dataFolder,
    };
    const started = startWeb(root, address, env);
    onStop(() => started.stop());
    rememberRun(dataFolder, address.url, started.pid);
    await untilHealthy(address.url, started);
    return started;
  });
  const signIn = server ? demoSignIn(dataFolder) : '';
  if (signIn) console.log(`\n${signIn}\n`);
  console.log(`Pawl is ready at ${address.url}`);
  return { web, server };
}

stopping.watch();
start().then(
  ({ web, server }) => stopping.whenEither(web, server),
  (error) => stopping.fail(error),
);
