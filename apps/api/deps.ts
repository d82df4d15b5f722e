import type { Settings } from '#libs/platform/settings/settings';
import type { Clock } from '#libs/platform/clock/clock';
import type { Db } from '#libs/platform/database/db';
import type { FileStore } from '#libs/platform/files/file-store';
import type { Limits } from '#libs/platform/limits/limits';

/** What the controllers are handed; one object for the whole program, also the token it is injected by. */
export class Deps {
  constructor(
    readonly db: Db,
    readonly clock: Clock,
    readonly files: FileStore,
    readonly limits: Limits,
    readonly settings: Pick<Settings, 'publicUrl' | 'demo' | 'dataFolder' | 'mail'>,
  ) {}

  get publicUrl(): string {
    return this.settings.publicUrl;
  }
}
