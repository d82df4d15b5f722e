import pg from 'pg';

/** An order that changed, and who may see it. Nothing of what changed: whoever is told asks anew, in their own fences. */
export interface OrderChange {
  order: string;
  practices: string[];
  centres: string[];
}

/** The practice whose images without an order have become more, fewer or visible. */
export interface TrayChange {
  tray: string;
}

/** `missed`: the line was not open until now, so anything may have changed. */
export type Change = OrderChange | TrayChange | 'missed';
type Heard = (change: Change) => void;

const AGAIN_MS = 2_000;

/** One line to the database for all open pages of a server, opened with the first listener and closed with the last. */
export class OrderChanges {
  readonly #listeners = new Set<Heard>();
  #line: pg.Client | undefined;
  #again: NodeJS.Timeout | undefined;

  constructor(private readonly url: string) {}

  /** Calls back with each change until the answer is called. */
  listen(heard: Heard): () => void {
    this.#listeners.add(heard);
    if (!this.#line && !this.#again) void this.#open();
    return () => {
      this.#listeners.delete(heard);
      if (this.#listeners.size === 0) void this.#hangUp();
    };
  }

  async close(): Promise<void> {
    this.#listeners.clear();
    await this.#hangUp();
  }

  async #hangUp(): Promise<void> {
    clearTimeout(this.#again);
    this.#again = undefined;
    const line = this.#line;
    this.#line = undefined;
    await line?.end().catch(() => undefined);
  }

  async #open(): Promise<void> {
    const line = new pg.Client({ connectionString: this.url, keepAlive: true });
    this.#line = line;
    line.on('notification', ({ channel, payload }) => this.#tell(channel === 'tray_changed' ? { tray: payload! } : (JSON.parse(payload!) as OrderChange)));
    line.on('error', () => this.#lost(line));
    line.on('end', () => this.#lost(line));
    try {
      await line.connect();
      await line.query('LISTEN order_changed; LISTEN tray_changed');
      this.#tell('missed');
    } catch {
      this.#lost(line);
    }
  }

  #lost(line: pg.Client): void {
    if (this.#line !== line) return;
    this.#line = undefined;
    if (this.#listeners.size === 0) return;
    this.#again = setTimeout(() => {
      this.#again = undefined;
      void this.#open();
    }, AGAIN_MS).unref();
  }

  #tell(change: Change): void {
    for (const heard of this.#listeners) heard(change);
  }
}
