import { createHash, randomBytes } from 'node:crypto';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { utimes, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import { PutObjectCommand } from '@aws-sdk/client-s3';
import { FileCorruptError, FileMissingError, FileTooLargeError } from '#libs/platform/files/file-errors';
import type { FileStore } from '#libs/platform/files/file-store';
import { openFileStore } from '#libs/platform/files/open-file-store';
import { startS3 } from './files-support/s3-server.js';

const MB = 1024 * 1024;
const limits = { maxBytes: 20 * MB };
const hashOf = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex');
const inPieces = (bytes: Buffer, piece = 64 * 1024) =>
  Readable.from((function* () { for (let at = 0; at < bytes.length; at += piece) yield bytes.subarray(at, at + piece); })());

interface Place {
  store: FileStore;
  staging: string;
  damage(sha256: string, bytes: Buffer): Promise<void>;
  close(): Promise<void>;
}

async function onDisk(): Promise<Place> {
  const dataFolder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-files-'));
  const folder = path.join(dataFolder, 'files');
  return {
    store: await openFileStore({ files: { kind: 'disk', folder }, dataFolder }),
    staging: path.join(folder, 'incoming'),
    damage: (sha256, bytes) => writeFile(path.join(folder, sha256.slice(0, 2), sha256.slice(2)), bytes),
    close: async () => rmSync(dataFolder, { recursive: true }),
  };
}

async function onS3(): Promise<Place> {
  const dataFolder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-files-'));
  const server = await startS3('films');
  return {
    store: await openFileStore({ files: server.files, dataFolder }),
    staging: path.join(dataFolder, 'incoming'),
    damage: async (sha256, bytes) => void (await server.client.send(new PutObjectCommand({ Bucket: 'films', Key: `${sha256.slice(0, 2)}/${sha256.slice(2)}`, Body: bytes }))),
    close: async () => {
      await server.stop();
      rmSync(dataFolder, { recursive: true });
    },
  };
}

describe('the file store on disk', () => behavesAsAFileStore(onDisk));
describe('the file store on S3', () => behavesAsAFileStore(onS3));

function behavesAsAFileStore(open: () => Promise<Place>): void {
  let place: Place;
  beforeAll(async () => { place = await open(); });
  afterAll(() => place.close());

  it('names a file by its hash and gives the same bytes back', async () => {
    const film = randomBytes(11 * MB + 7);
    const stored = await place.store.put(inPieces(film), limits);
    expect(stored).toEqual({ sha256: hashOf(film), size: film.length });
    expect(hashOf(await buffer(await place.store.read(stored.sha256)))).toBe(stored.sha256);
  });

  it('keeps the same bytes once, and an empty file too', async () => {
    const first = await place.store.put(inPieces(Buffer.from('film')), limits);
    expect(await place.store.put(inPieces(Buffer.from('film')), limits)).toEqual(first);
    const empty = await place.store.put(inPieces(Buffer.alloc(0)), limits);
    expect(await buffer(await place.store.read(empty.sha256))).toHaveLength(0);
  });

  it('lists every file that it keeps, and nothing that was left half', async () => {
    const { sha256 } = await place.store.put(inPieces(Buffer.from('listed')), limits);
    const listed: string[] = [];
    for await (const one of place.store.list()) listed.push(one);
    expect(listed).toContain(sha256);
    expect(new Set(listed).size).toBe(listed.length);
    for (const one of listed) expect(await place.store.exists(one)).toBe(true);
  });

  it('refuses a file that is too large and leaves nothing behind', async () => {
    const film = randomBytes(3 * MB);
    await expect(place.store.put(inPieces(film), { maxBytes: 2 * MB })).rejects.toThrow(new FileTooLargeError(2 * MB));
    expect(await place.store.exists(hashOf(film))).toBe(false);
    expect(readdirSync(place.staging)).toEqual([]);
  });

  it('takes nothing from an upload that breaks off', async () => {
    const broken = Readable.from((function* () { yield Buffer.from('half a film'); throw new Error('the line was cut'); })());
    await expect(place.store.put(broken, limits)).rejects.toThrow('the line was cut');
    expect(await place.store.exists(hashOf(Buffer.from('half a film')))).toBe(false);
    expect(readdirSync(place.staging)).toEqual([]);
  });

  it.each([['one byte changed', (film: Buffer) => { film[film.length - 1]! ^= 1; return film; }], ['cut short', (film: Buffer) => film.subarray(0, -5)]])(
    'fails before the end of a stored file with %s, and is mended by putting the file again',
    async (_, change) => {
      const film = randomBytes(MB);
      const { sha256 } = await place.store.put(inPieces(film), limits);
      await place.damage(sha256, change(Buffer.from(film)));
      let served = 0;
      const reading = (async () => { for await (const chunk of await place.store.read(sha256)) served += (chunk as Buffer).length; })();
      await expect(reading).rejects.toThrow(FileCorruptError);
      expect(served).toBeLessThan(film.length - 5);
      await place.store.put(inPieces(film), limits);
      expect(hashOf(await buffer(await place.store.read(sha256)))).toBe(sha256);
    },
  );

  it('says that a file is not there', async () => {
    const nowhere = hashOf(Buffer.from('never stored'));
    expect(await place.store.exists(nowhere)).toBe(false);
    await expect(place.store.read(nowhere)).rejects.toThrow(FileMissingError);
  });

  it('takes no name that could lead elsewhere', async () => {
    await expect(place.store.read('../../etc/passwd')).rejects.toThrow(RangeError);
    await expect(place.store.exists('..')).rejects.toThrow(RangeError);
  });

  it('clears away what killed uploads left, and only that', async () => {
    const [old, young] = ['old', 'young'].map((name) => path.join(place.staging, name)) as [string, string];
    await writeFile(old, 'x');
    await writeFile(young, 'x');
    await utimes(old, new Date('2026-01-01'), new Date('2026-01-01'));
    expect(await place.store.clearStaging(new Date('2026-01-02'))).toBe(1);
    expect(readdirSync(place.staging)).toEqual(['young']);
  });
}
