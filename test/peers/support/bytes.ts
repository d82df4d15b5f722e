import { connect, type Socket } from 'node:net';
import type { Gateway } from '#apps/gateway/gateway';

/** Says these bytes on a line of its own, and the others once it was answered, and waits until the gateway has hung up, or a while. */
export function sayTo({ gateway }: { gateway: Gateway }, bytes: Buffer, { hangUp = false, then, waitMs = 1500 }: { hangUp?: boolean; then?: Buffer; waitMs?: number } = {}): Promise<'hung up' | 'open'> {
  return new Promise((resolve) => {
    const line: Socket = connect(gateway.port, '127.0.0.1', () => {
      line.write(bytes);
      if (hangUp) line.destroy();
    });
    const late = setTimeout(() => { resolve('open'); line.destroy(); }, waitMs);
    line.on('error', () => undefined).once('data', () => then && line.write(then)).on('close', () => { clearTimeout(late); resolve('hung up'); });
  });
}

export const pdu = (type: number, claims: number, body = Buffer.alloc(0)) => {
  const head = Buffer.alloc(6);
  head[0] = type;
  head.writeUInt32BE(claims, 2);
  return Buffer.concat([head, body]);
};
const title = (name: string) => Buffer.from(name.padEnd(16));
const item = (type: number, body: Buffer) => { const head = Buffer.alloc(4); head[0] = type; head.writeUInt16BE(body.length, 2); return Buffer.concat([head, body]); };

/** A well-formed request for one thing by the machine of this room. */
export function associate({ called, calling }: { called: string; calling: string }, abstract: string, transfer = '1.2.840.10008.1.2.1'): Buffer {
  const context = item(0x20, Buffer.concat([Buffer.from([1, 0, 0, 0]), item(0x30, Buffer.from(abstract)), item(0x40, Buffer.from(transfer))]));
  const user = item(0x50, item(0x51, Buffer.from([0, 0, 64, 0])));
  const body = Buffer.concat([Buffer.from([0, 1, 0, 0]), title(called), title(calling), Buffer.alloc(32), item(0x10, Buffer.from('1.2.840.10008.3.1.1.1')), context, user]);
  return pdu(1, body.length, body);
}

export const DX = '1.2.840.10008.5.1.4.1.1.1.1';

/** One part of a message for the first thing that was asked for. */
export function data(command: boolean, value: Buffer, last = true): Buffer {
  const head = Buffer.alloc(6);
  head.writeUInt32BE(value.length + 2, 0);
  head[4] = 1;
  head[5] = (command ? 1 : 0) + (last ? 2 : 0);
  return pdu(4, value.length + 6, Buffer.concat([head, value]));
}

/** A message's command (DICOM PS3.7 annex E) with its numbers and UIDs, and word that a data set follows. */
export function command(field: number, uids: Record<number, string>): Buffer {
  const element = (number: number, value: Buffer) => { const head = Buffer.alloc(8); head.writeUInt16LE(number, 2); head.writeUInt32LE(value.length, 4); return Buffer.concat([head, value]); };
  const short = (value: number) => { const bytes = Buffer.alloc(2); bytes.writeUInt16LE(value); return bytes; };
  const uid = (value: string) => Buffer.from(value.length % 2 ? `${value}\0` : value);
  const all: [number, Buffer][] = [[0x0100, short(field)], [0x0110, short(1)], [0x0700, short(0)], [0x0800, short(0x0102)], ...Object.entries(uids).map(([number, value]): [number, Buffer] => [Number(number), uid(value)])];
  return Buffer.concat(all.sort(([a], [b]) => a - b).map(([number, value]) => element(number, value)));
}

/** "Here comes an image." */
export const storeCommand = (instance: string): Buffer => command(0x01, { 0x0002: DX, 0x1000: instance });
