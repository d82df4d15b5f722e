import { installPackages } from './lib/install.mjs';
import { say } from './lib/say.mjs';

async function main() {
  await installPackages();
  const { buildServer } = await import('./lib/build-server.mjs');
  const { buildWeb } = await import('./lib/build-web.mjs');
  const { generateClient } = await import('./lib/generate-client.mjs');
  const { runJest } = await import('./lib/run-jest.mjs');
  await generateClient();
  await Promise.all([buildServer(), buildWeb()]);
  say('Built; running the tests.');
  return runJest(process.argv.slice(2));
}

const { passed, failed, skipped } = await main().catch((error) => {
  console.error(error.message);
  return { passed: 0, failed: 1, skipped: 0 };
});
console.log(`${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed || !passed ? 1 : 0;
