import type { Settings } from '#libs/platform/settings/settings';
import type { Clock } from '#libs/platform/clock/clock';
import type { Db } from '#libs/platform/database/db';
import type { FileStore } from '#libs/platform/files/file-store';
import type { SecretBox } from '#libs/platform/secrets/secret-box';
import { Outgoing } from '#libs/platform/outgoing/outgoing';
import type { Limits } from '#libs/platform/limits/limits';

const USUAL_GATEWAY_PORT = 11_112;

/** What the controllers are handed; one object for the whole program, also the token it is injected by. */
export class Deps {
  /** Judges addresses that people enter; what is called is called by the worker. */
  readonly outgoing: Outgoing;

  constructor(
    readonly db: Db,
    readonly clock: Clock,
    readonly files: FileStore,
    readonly limits: Limits,
    readonly secrets: SecretBox,
    readonly settings: Pick<Settings, 'publicUrl' | 'demo' | 'dataFolder' | 'mail'> & Partial<Pick<Settings, 'gateway' | 'outgoing'>>,
  ) {
    this.outgoing = new Outgoing({ outgoing: settings.outgoing ?? { allow: [] } });
  }

  /** Where X-ray machines call; told to whoever sets one up. */
  get gatewayPort(): number {
    return this.settings.gateway?.port ?? USUAL_GATEWAY_PORT;
  }

  get publicUrl(): string {
    return this.settings.publicUrl;
  }
}
