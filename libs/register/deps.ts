import type { Clock } from '#libs/platform/clock/clock';
import type { Db } from '#libs/platform/database/db';

/** What the register's use cases are handed by the program around them. */
export interface RegisterDeps {
  db: Db;
  clock: Clock;
}

/** What every step's use case is handed. */
export interface StepDeps extends RegisterDeps {
  publicUrl: string;
}
