import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { freePort } from '#test/medium/queue-support/free-port';

/** An archive of other people that speaks DICOMweb, with one name and password. */
export class Archive {
  private constructor(private readonly process: ChildProcess, private readonly folder: string, readonly host: string) {}

  static async open(program: string): Promise<Archive> {
    const folder = mkdtempSync(path.join(tmpdir(), 'archive-'));
    const [http, dicom] = [await freePort(), await freePort()];
    const settings = path.join(folder, 'orthanc.json');
    writeFileSync(settings, JSON.stringify({
      Name: 'Centre', StorageDirectory: folder, IndexDirectory: folder, HttpPort: http, DicomPort: dicom, RemoteAccessAllowed: false, AuthenticationEnabled: true, RegisteredUsers: { practice: 'word' },
      Plugins: ['/usr/share/orthanc/plugins'], DicomWeb: { Enable: true, Root: '/dicom-web/' },
    }));
    const running = spawn(program, [settings], { stdio: ['ignore', 'ignore', 'pipe'] });
    await new Promise<void>((resolve, reject) => {
      running.stderr!.on('data', (line: Buffer) => line.includes('Orthanc has started') && resolve());
      running.once('exit', (code) => reject(new Error(`The archive ended before it was ready: ${code}`)));
    });
    return new Archive(running, folder, `127.0.0.1:${http}`);
  }

  get channel() {
    return { kind: 'dicomweb', address: `http://${this.host}/dicom-web`, account: 'practice', secret: 'word' } as const;
  }

  /** What it answers when it is asked for all its images, with these attributes. */
  async images(...attributes: string[]): Promise<Record<string, { Value?: unknown[] }>[]> {
    const asked = attributes.map((a) => `includefield=${a}`).join('&');
    const answer = await fetch(`http://${this.host}/dicom-web/instances?${asked}`, { headers: { authorization: `Basic ${Buffer.from('practice:word').toString('base64')}`, accept: 'application/dicom+json' } });
    return answer.status === 204 ? [] : ((await answer.json()) as Record<string, { Value?: unknown[] }>[]);
  }

  async close(): Promise<void> {
    const gone = once(this.process, 'exit');
    this.process.kill('SIGTERM');
    await gone;
    rmSync(this.folder, { recursive: true });
  }
}
