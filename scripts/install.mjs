import { installPackages } from './lib/install.mjs';

installPackages();
