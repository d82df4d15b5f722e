import pg from 'pg';
import { relayOutbox } from '#libs/platform/database/outbox';
import { PermanentError } from '#libs/platform/queue/job-errors';
import type { JobQueue } from '#libs/platform/queue/job-queue';
import type { Jobs } from '#libs/steps/jobs';
import { recordProblem } from '#libs/steps/problem';
import type { StepDeps } from '#libs/steps/record/step-deps';

/** Rows that a notice was missed for are found by looking now and then. */
const LOOK_SECONDS = 5;

/** Brings jobs from the outbox to the queue: at once when the database says so, and in any case soon. */
export class Relay {
  #listener: pg.Client | undefined;
  #timer: NodeJS.Timeout | undefined;
  #running: Promise<void> | undefined;
  #again = false;
  #closed = false;

  constructor(private readonly deps: StepDeps, private readonly queue: JobQueue<Jobs>, private readonly url: string, private readonly onError: (error: Error) => void) {}

  async start(): Promise<void> {
    await this.#listen();
    this.#timer = setInterval(() => this.#look(), LOOK_SECONDS * 1000);
    this.#look();
  }

  async close(): Promise<void> {
    this.#closed = true;
    clearInterval(this.#timer);
    await this.#running;
    await this.#listener?.end();
  }

  async #listen(): Promise<void> {
    const listener = new pg.Client({ connectionString: this.url, keepAlive: true });
    listener.on('notification', () => this.#look());
    // A lost line is only a slower relay: the timer goes on, and the line is tried again.
    listener.on('error', (error) => {
      this.onError(error);
      this.#listener = undefined;
    });
    await listener.connect();
    await listener.query('LISTEN outbox');
    this.#listener = listener;
  }

  #look(): void {
    if (this.#closed) return;
    if (this.#running) {
      this.#again = true;
      return;
    }
    this.#running = this.#relay().catch(this.onError).finally(() => {
      this.#running = undefined;
      if (this.#again) {
        this.#again = false;
        this.#look();
      }
    });
  }

  async #relay(): Promise<void> {
    if (!this.#listener) await this.#listen();
    for (;;) {
      const count = await this.deps.db.system('relay the outbox', (tx) =>
        relayOutbox(tx, async (row) => {
          try {
            await this.queue.relay(row.job, row.payload, row.dedupe ? { key: row.dedupe } : {});
            return 'handed';
          } catch (error) {
            if (!(error instanceof PermanentError || error instanceof RangeError)) throw error;
            await recordProblem(this.deps, { name: row.job, payload: row.payload }, error);
            return 'refused';
          }
        }, this.deps.clock.now()));
      if (count < 100) return;
    }
  }
}
