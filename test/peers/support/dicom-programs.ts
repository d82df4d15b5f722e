import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** Other people's programs that read and write DICOM files, and a folder to hand files over in. */
export class DicomPrograms {
  readonly folder = mkdtempSync(path.join(tmpdir(), 'dicom-'));

  close(): void {
    rmSync(this.folder, { recursive: true });
  }

  put(name: string, content: Buffer): string {
    const file = path.join(this.folder, name);
    writeFileSync(file, content);
    return file;
  }

  /** What the program makes of a file. */
  through(program: string, options: string[], content: Buffer): Buffer {
    const to = path.join(this.folder, 'to.dcm');
    execFileSync(program, [...options, this.put('from.dcm', content), to], { stdio: 'pipe' });
    return readFileSync(to);
  }

  /** What the program says of a file. */
  read(program: string, options: string[], content: Buffer): string {
    return execFileSync(program, [...options, this.put('read.dcm', content)], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  }

  /** What dciodvfy takes the file for, and what it finds wrong. */
  verify(content: Buffer): { kind: string; errors: string[] } {
    const lines = spawnSync('dciodvfy', [this.put('verified.dcm', content)], { encoding: 'utf8' }).stderr.split('\n');
    return { kind: lines.find((line) => /^[A-Z]\w+$/.test(line)) ?? '', errors: lines.filter((line) => line.startsWith('Error')) };
  }
}
