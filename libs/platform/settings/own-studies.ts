import { readFileSync } from 'node:fs';
import { ScienceError } from '#libs/science/error';
import { installStudies } from '#libs/science/protocols/catalogue';
import { SettingsError } from './settings-error.js';

/** Installs the studies of the file that STUDIES_FILE names; a file that cannot be meant stops the start with a sentence. */
export function installOwnStudies(file: string | undefined): void {
  if (file === undefined) return;
  try {
    installStudies(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    if (!(error instanceof ScienceError || error instanceof SyntaxError || (error as NodeJS.ErrnoException).code !== undefined)) throw error;
    throw new SettingsError([{ variable: 'STUDIES_FILE', sentence: `${file}: ${(error as Error).message}` }]);
  }
}
