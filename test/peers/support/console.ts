import { execFile } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { DataSet } from 'dicom-parser';
import { startGateway, type Gateway, type GatewayOptions } from '#apps/gateway/gateway';
import type { LineLimits } from '#apps/gateway/line';
import { readDataSet } from '#libs/dicom/read-data-set';
import { Happenings } from '#test/medium/queue-support/until';
import type { RunningServer } from '#test/support/running-server';

export interface Said { code: number; out: string }

/** A machine in an X-ray room: dcmtk's programs, and the gateway that they talk to. */
export class ConsoleRoom {
  private constructor(readonly gateway: Gateway, readonly folder: string, readonly called: string, readonly calling: string, /** What the gateway wrote. */ readonly log: Happenings<string>) {}

  static async open(server: RunningServer, practice: string, { limits = {}, calling = 'DXROOM1', tls }: { limits?: Partial<LineLimits>; calling?: string; tls?: GatewayOptions['tls'] } = {}): Promise<ConsoleRoom> {
    const log = new Happenings<string>();
    const gateway = await startGateway({ deps: server.deps, host: '127.0.0.1', port: 0, tls, limits, log: (words, error) => log.add(error instanceof Error ? `${words}: ${error.stack}` : words) });
    const called = await server.look(async (tx) => {
      await tx.$executeRaw`INSERT INTO console (practice_id, name, ae_title, address, at, by, by_name) VALUES (${practice}::uuid, ${`X-ray room, ${calling}`}, ${calling}, '127.0.0.1', now(), 'a test', 'A test') ON CONFLICT DO NOTHING`;
      return (await tx.$queryRaw<{ title: string }[]>`SELECT app.called_title(${practice}::uuid) AS title`)[0]!.title;
    });
    return new ConsoleRoom(gateway, await mkdtemp(path.join(tmpdir(), 'console-')), called, calling, log);
  }

  async close(): Promise<void> {
    await this.gateway.close(1000);
    await rm(this.folder, { recursive: true });
  }

  echo(titles: { calling?: string; called?: string } = {}, options: string[] = [], port?: number): Promise<Said> {
    return this.#run('echoscu', titles, options, [], port);
  }

  find(keys: string[], options: string[] = []): Promise<Said> {
    return this.#run('findscu', {}, ['-W', ...options, ...keys.flatMap((key) => ['-k', key])]);
  }

  /** The answers to a question of the worklist. */
  async worklist(keys: string[]): Promise<DataSet[]> {
    const folder = await mkdtemp(path.join(this.folder, 'answers-'));
    const asked = await this.find(keys, ['-X', '-od', folder]);
    if (asked.code !== 0) throw new Error(asked.out);
    const names = (await readdir(folder)).sort();
    return Promise.all(names.map(async (name) => readDataSet(await readFile(path.join(folder, name)))));
  }

  async store(files: Buffer[], options: string[] = [], titles: { calling?: string; called?: string } = {}, port?: number): Promise<Said> {
    const names = await Promise.all(files.map(async (content, i) => {
      const name = path.join(this.folder, `film-${i}.dcm`);
      await writeFile(name, content);
      return name;
    }));
    return this.#run('storescu', titles, options, names, port);
  }

  #run(program: string, { calling = this.calling, called = this.called }: { calling?: string; called?: string }, options: string[], names: string[] = [], port = this.gateway.port): Promise<Said> {
    const args = ['-v', '-aet', calling, '-aec', called, ...options, '127.0.0.1', String(port), ...names];
    return new Promise((resolve) => execFile(program, args, { maxBuffer: 64 * 1024 * 1024 }, (error, stdout, stderr) => resolve({ code: error ? Number(error.code ?? 1) : 0, out: stdout + stderr })));
  }
}
