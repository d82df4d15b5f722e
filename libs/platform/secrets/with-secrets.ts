import type { SecretBox } from './secret-box.js';

/** What is handed to whoever stores secrets, reads them, or says that they can be read. */
export interface WithSecrets { secrets: SecretBox }
