import { readFileSync } from 'node:fs';

interface Sample { minute: number; mib: number }

/** What a process has in memory, looked at again and again; on systems that say so in /proc. */
export class MemoryWatch {
  readonly samples: Sample[] = [];
  readonly #began = Date.now();

  constructor(readonly pid: number) {}

  look(): void {
    const pages = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${this.pid}/status`, 'utf8'));
    if (pages) this.samples.push({ minute: (Date.now() - this.#began) / 60_000, mib: Number(pages[1]) / 1024 });
  }
}

export const median = (numbers: number[]): number => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? Number.NaN;

/** MiB a minute: the middle of the slopes between all pairs of samples (Theil 1950, Sen 1968; from memory), which single peaks do not move. */
export function trend(samples: readonly Sample[]): number {
  return median(samples.flatMap((a, i) => samples.slice(i + 1).filter((b) => b.minute > a.minute).map((b) => (b.mib - a.mib) / (b.minute - a.minute))));
}

/** The value below which this share of the numbers lies, by nearest rank. */
export function percentile(numbers: readonly number[], share: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(sorted.length * share) - 1)] ?? Number.NaN;
}
