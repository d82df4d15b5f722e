import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmdirSync } from 'node:fs';
import { open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** A real disk of a few megabytes, which a test may fill. */
export class TinyDisk {
  readonly folder = mkdtempSync(path.join(tmpdir(), 'tiny-'));

  constructor(megabytes: number) {
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m,mode=0777`, 'tmpfs', this.folder], { stdio: 'pipe' });
    } catch (error) {
      rmdirSync(this.folder);
      throw error;
    }
  }

  /** Takes all the room but so much. */
  async fill(leaveBytes = 0): Promise<void> {
    const piece = Buffer.alloc(64 * 1024);
    const filler = await open(this.#filler, 'a');
    try {
      for (;;) await filler.writeFile(piece);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOSPC') throw error;
      if (leaveBytes) await filler.truncate((await filler.stat()).size - leaveBytes);
    } finally {
      await filler.close();
    }
  }

  makeRoom(): Promise<void> {
    return rm(this.#filler, { force: true });
  }

  remove(): void {
    execFileSync('umount', ['-l', this.folder]);
    rmdirSync(this.folder);
  }

  get #filler(): string {
    return path.join(this.folder, 'filler');
  }
}

function whyNot(): string | undefined {
  if (process.platform !== 'linux') return 'only Linux mounts a small disk from memory';
  try {
    new TinyDisk(1).remove();
    return undefined;
  } catch (error) {
    return `this account may not mount a small disk (${(error as Error).message.split('\n').filter(Boolean).at(-1)})`;
  }
}

/** Tests on a disk that gets full; skipped with the reason where none can be mounted. */
export function describeOnTinyDisk(title: string, tests: () => void): void {
  const reason = whyNot();
  if (reason) describe.skip(`${title} (skipped: ${reason})`, tests);
  else describe(title, tests);
}
