import { setTimeout as pause } from 'node:timers/promises';

/** A started process, as scripts/lib/children.mjs has it. */
export interface Child { pid: number; ended: Promise<string>; stop: () => Promise<void> }

const AGAIN_MS = 200;

/** A process that whoever keeps it starts again whenever it ends. */
export class KeptProcess {
  #child: Child;
  #stopping = false;
  #killed = false;
  /** Ends that nobody caused by killing this very process. */
  ownEnds = 0;
  kills = 0;

  constructor(private readonly start: () => Child) {
    this.#child = start();
    void this.#keep();
  }

  get pid(): number {
    return this.#child.pid;
  }

  kill(): void {
    this.#killed = true;
    this.kills++;
    process.kill(this.#child.pid, 'SIGKILL');
  }

  async stop(): Promise<void> {
    this.#stopping = true;
    await this.#child.stop();
  }

  async #keep(): Promise<void> {
    while (!this.#stopping) {
      await this.#child.ended;
      if (this.#stopping) return;
      if (!this.#killed) this.ownEnds++;
      this.#killed = false;
      await pause(AGAIN_MS);
      if (!this.#stopping) this.#child = this.start();
    }
  }
}
