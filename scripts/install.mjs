import { installPackages } from './lib/install.mjs';

await installPackages();
