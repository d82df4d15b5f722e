// Plain Node with nothing imported but its own until the packages are in place.
import { installPackages } from './lib/install.mjs';
import { say } from './lib/say.mjs';
import { readStartOptions } from './lib/start-options.mjs';

const stopping = new AbortController();
const running = []; // what must be stopped, in the order it was started
let exitCode = 0;

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  process.on(signal, () => {
    if (!stopping.signal.aborted) say('Stopping …');
    stopping.abort();
  });
}

async function start() {
  const options = readStartOptions(process.argv.slice(2));
  if (options.help) return console.log(options.help);
  await installPackages();
  const { launch } = await import('./lib/launch.mjs');
  await launch(options, { running, stop: stopping.signal });
}

try {
  await start();
} catch (error) {
  if (!stopping.signal.aborted) {
    console.error(`\n${error.message}`);
    exitCode = 1;
  }
}
for (const { name, stop } of running.reverse()) {
  try {
    await stop();
  } catch (error) {
    console.error(`${name} did not stop cleanly: ${error.message}`);
    exitCode = 1;
  }
}
if (running.length) say('Stopped.');
process.exit(exitCode);
