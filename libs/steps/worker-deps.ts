import type { FileStore } from '#libs/platform/files/file-store';
import type { Mailer } from '#libs/platform/mail/mailer';
import type { Outgoing } from '#libs/platform/outgoing/outgoing';
import type { WithSecrets } from '#libs/platform/secrets/with-secrets';
import type { StepDeps } from './record/step-deps.js';

export interface WorkerDeps extends StepDeps, WithSecrets {
  files: FileStore;
  mailer: Mailer;
  /** Calls addresses that people entered. */
  outgoing: Pick<Outgoing, 'fetch'>;
  /** Domain of the Message-IDs. */
  mailDomain: string;
  /** A file that outlives the database: who was erased stays erased after a restore. Left out where nobody is. */
  tombstones?: string;
}
