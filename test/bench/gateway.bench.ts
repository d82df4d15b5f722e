import { execFile } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { DicomScan } from '#libs/dicom/scan';
import { newUid } from '#libs/dicom/uids';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { prepareQueue } from '#libs/platform/queue/prepare-queue';
import type { BenchContext } from '../support/bench.js';
import { findPeer } from '../support/peers.js';
import { environment, peakMegabytes, startApp, startGatewayProcess, startStorescp, type Listening } from './support/gateway-process.js';
import { median } from './support/load.js';
import { openBench, type BenchGround } from './support/open-bench.js';

const IMAGES = 200;
const SIZES = [['18 MB', 3000], ['2 MB', 1000]] as const;
const ONE_CONSOLE = 'DXBENCH';

/** A film without a view, so that it stays at its order and waits: the longer way through the gateway. */
function film(side: number, accession: string): Buffer {
  const values = new Uint16Array(side * side).map((_, i) => (i * 7919) % 4096);
  return writeRadiograph({
    dog: { animalId: 'D-1', issuer: 'COTYLA', name: 'Bench', owner: 'A Bench', sex: 'female', neutered: false, breed: 'Invented', transponders: [], studBook: [] },
    studyUid: newUid(), seriesUid: newUid(), accession, day: '2026-11-29', time: '10:11:12', instance: 1, region: 'hip', side: 'both', view: { code: 'none', label: 'No view' },
    pixels: { rows: side, columns: side, bits: 12, values }, spacing: [0.14, 0.14], manufacturer: 'Invented X-ray',
  });
}

/** Sends the file so many times over so many lines, each time under another number; gives the seconds that it took. */
async function send(port: number, called: string, file: string, { images, lines }: { images: number; lines: number }): Promise<number> {
  const args = ['-aet', ONE_CONSOLE, '-aec', called, '--invent-instance', '--repeat', String(images / lines), '127.0.0.1', String(port), file];
  const start = performance.now();
  await Promise.all(Array.from({ length: lines }, () => new Promise<void>((resolve, reject) => execFile('storescu', args, { maxBuffer: 1e8 }, (error, out, words) => (error ? reject(new Error(out + words)) : resolve())))));
  return (performance.now() - start) / 1000;
}

interface Place { ground: BenchGround; owner: pg.Client; called: string; folder: string }

/** From the first byte that is sent to the small picture that the order's page shows. */
async function imageToScreen({ ground, owner, called, folder }: Place, { row }: BenchContext, file: string, name: string): Promise<void> {
  const gateway = await startGatewayProcess(ground.database, folder);
  const worker = startApp('worker', environment(ground.database, folder));
  const drawn = async () => Number((await owner.query<{ n: string }>('SELECT count(*) AS n FROM image WHERE order_id = $1 AND preview_sha IS NOT NULL', [ground.roads[0]!.order])).rows[0]!.n);
  await once(worker.stdout!, 'data');
  await owner.query('LISTEN order_changed');
  const times: number[] = [];
  for (let i = 0; i < 7; i++) {
    const before = await drawn();
    const start = performance.now();
    const seen = new Promise<number>((resolve) => {
      const look = () => void drawn().then((n) => {
        if (n <= before) return;
        owner.off('notification', look);
        resolve(performance.now() - start);
      });
      owner.on('notification', look);
    });
    await send(gateway.port, called, file, { images: 1, lines: 1 });
    times.push(await seen);
  }
  await owner.query('UNLISTEN order_changed');
  row(`image to screen, ${name}: sent until its small picture is there`, median(times.slice(1)), 'ms');
  worker.kill();
  await Promise.all([once(worker, 'exit'), gateway.stop()]);
}

/** The gateway and dcmtk's own receiver in turns, which is also what the same disk gives. */
async function throughput({ ground, owner, called, folder }: Place, { row }: BenchContext, file: string, name: string, lines: number): Promise<void> {
  const run = async (start: (into: string) => Promise<Listening>, title: string) => {
    const into = path.join(folder, 'received');
    await mkdir(into);
    const receiver = await start(into);
    const seconds = await send(receiver.port, title, file, { images: IMAGES, lines });
    const peak = await peakMegabytes(receiver.pid);
    await receiver.stop();
    await rm(into, { recursive: true, maxRetries: 10 });
    return { perSecond: IMAGES / seconds, peak };
  };
  const count = async () => Number((await owner.query<{ n: string }>('SELECT count(*) AS n FROM received_image')).rows[0]!.n);
  const before = await count();
  const bare = await run(startStorescp, 'STORESCP');
  const ours = await run((into) => startGatewayProcess(ground.database, into), called);
  if ((await count()) - before !== IMAGES) throw new Error('Not all images became rows.');
  const title = `${IMAGES} images of ${name}, ${lines === 1 ? 'one line' : `${lines} lines`}`;
  row(`${title}: gateway ÷ dcmtk storescp`, ours.perSecond, 'images/s', ours.perSecond / bare.perSecond);
  row(`${title}: most memory of the gateway`, ours.peak, 'MB');
}

export async function run(context: BenchContext): Promise<void> {
  if (!findPeer('storescu')) return console.log('  left out: dcmtk is not on this machine (Debian package dcmtk)');
  const ground = await openBench(['Nettle']);
  await prepareQueue({ ownerUrl: ground.database.ownerUrl, logins: ['cotyla_worker'] });
  const owner = new pg.Client(ground.database.ownerUrl);
  await owner.connect();
  const folder = await mkdtemp(path.join(tmpdir(), 'gateway-bench-'));
  const { house, accession } = ground.roads[0]!;
  try {
    const { rows } = await owner.query<{ title: string }>("INSERT INTO console (practice_id, name, ae_title, address, at, by, by_name) VALUES ($1, 'Bench', $2, '127.0.0.1', now(), 'bench', 'Bench') RETURNING app.called_title(practice_id) AS title", [house.id, ONE_CONSOLE]);
    const place = { ground, owner, called: rows[0]!.title, folder };
    for (const [name, side] of SIZES) {
      const content = film(side, accession);
      const file = path.join(folder, `${side}.dcm`);
      await writeFile(file, content);
      headRead(context, content, name);
      await imageToScreen(place, context, file, name);
      for (const lines of [1, 8]) await throughput(place, context, file, name, lines);
    }
  } finally {
    await owner.end();
    await ground.close();
    await rm(folder, { recursive: true, force: true });
  }
}

/** What stands before the pixels, read from the first part of a file as it comes. */
function headRead({ row }: BenchContext, content: Buffer, name: string): void {
  const times = Array.from({ length: 40 }, () => {
    const scan = new DicomScan();
    const start = performance.now();
    for (let at = 0; at < content.length; at += 65_536) scan.push(content.subarray(at, at + 65_536));
    scan.end();
    return performance.now() - start;
  });
  row(`head of a file of ${name}, read as it passes by`, median(times), 'ms');
}
