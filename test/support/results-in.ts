import { createHash, randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import request, { type Response } from 'supertest';
import type { DeliveryAnswer, FilePreview, KeyMade } from '#libs/contracts/results-in';
import { sign } from '#libs/steps/results-in/signature';
import type { Road } from './road.js';
import type { RunningServer } from './running-server.js';
import type { Session } from './session.js';
import { workbookOf } from './workbook.js';

/** A centre's computer, as docs/results-in.md tells it to sign. */
export class CentreComputer {
  constructor(readonly server: RunningServer, readonly made: KeyMade) {}

  static async of(server: RunningServer, lead: Session, centre: string): Promise<CentreComputer> {
    return new CentreComputer(server, await lead.send<KeyMade>('/api/results-in/keys?as=lead', { centre }));
  }

  get now(): string { return String(Math.floor(this.server.clock.now().getTime() / 1000)); }

  /** `sent` is what goes over the line where that is not what was signed. */
  send(body: unknown, { key = randomUUID() as string, time = this.now, secret = this.made.secret, sent, way = 'messages' }: { key?: string; time?: string; secret?: string; sent?: { body?: string; key?: string; time?: string; signature?: string }; way?: 'messages' | 'fhir' } = {}): Promise<Response> {
    const text = typeof body === 'string' ? body : JSON.stringify(body);
    const signature = `v1=${sign(secret, time, key, Buffer.from(text))}`;
    // Later than any second that this clock has shown, so that the same message is not the same signature by chance.
    this.server.clock.advance({ seconds: 1 });
    return request(this.server.url).post(`/api/results-in/${way}`).set('content-type', way === 'fhir' ? 'application/fhir+json' : 'application/json')
      .set('cotyla-key', this.made.key).set('cotyla-time', sent?.time ?? time).set('cotyla-signature', sent?.signature ?? signature).set('idempotency-key', sent?.key ?? key).send(sent?.body ?? text) as unknown as Promise<Response>;
  }
}

/** An example of the documentation, with the numbers of these packages in the place of its own. */
export function example(name: 'readings.csv' | 'message.json' | 'bundle.json', packages: Record<string, string>, readOn: string): string {
  const text = readFileSync(path.resolve(import.meta.dirname, '../../docs/results-in', name), 'utf8');
  const [y, m, d] = readOn.split('-');
  return Object.entries(packages).reduce((all, [from, to]) => all.replaceAll(from, to), text).replaceAll('2026-11-30', readOn).replaceAll('30.11.2026', `${d}.${m}.${y}`);
}

export async function packageOf(road: Road, protocol: string): Promise<string> {
  const id = road.study(protocol).packages.at(-1)!.id;
  return (await road.server.look((tx) => tx.package.findUniqueOrThrow({ where: { id }, select: { number: true } }))).number;
}

/** The example in a workbook: numbers and days as a spreadsheet stores them, and the rest as text. */
export function exampleWorkbook(packages: Record<string, string>, readOn: string): Promise<Buffer> {
  const day = { number: Date.parse(readOn) / 86_400_000 + 25_569, shown: 'day' } as const;
  const rows = example('readings.csv', packages, readOn).trim().split('\n').map((line) => line.trim().split(';'));
  return workbookOf(rows.map((cells, i) => cells.map((text, n) => (text === '' ? null : i > 0 && rows[0]![n] === 'read on' ? day : i > 0 && /^\d{1,3}(,\d+)?$/.test(text) ? Number(text.replace(',', '.')) : text))));
}

export const inFile = (text: string | Buffer, more: { centre?: string; as?: string } = {}) => ({ ...(more.centre && { centre: more.centre }), name: 'readings.csv', content: Buffer.from(text).toString('base64') });

export const looks = (who: Session, file: ReturnType<typeof inFile>, as = ''): Promise<FilePreview> => who.send<FilePreview>(`/api/results-in/preview${as}`, file);
export const takes = (who: Session, file: ReturnType<typeof inFile>, as = ''): Promise<DeliveryAnswer> =>
  who.send<DeliveryAnswer>(`/api/results-in/take${as}`, { ...file, hash: createHash('sha256').update(Buffer.from(file.content, 'base64')).digest('hex') });
