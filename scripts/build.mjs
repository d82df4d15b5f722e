import { buildServer } from './lib/build-server.mjs';
import { buildWeb } from './lib/build-web.mjs';
import { generateClient } from './lib/generate-client.mjs';
import { installPackages } from './lib/install.mjs';
import { say } from './lib/say.mjs';

await installPackages();
await generateClient();
await Promise.all([buildServer(), buildWeb()]);
say('Built: dist/apps, dist/libs, dist/seed and dist/web.');
