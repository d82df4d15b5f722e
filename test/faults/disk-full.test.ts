import { chown, readdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { complaintOf } from '#test/medium/access-support/complaint';
import { openApi, type OpenApi } from '#test/medium/access-support/open-api';
import { contentOf } from '#test/medium/access-support/tables';
import { signIn, type Visitor } from '#test/medium/access-support/visitor';
import { aNoisyFilm } from '#test/support/film';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { admit, goHome, image, ownerSigns, sedate } from '#test/support/visit-legs';
import { describeOnTinyDisk, TinyDisk } from './tiny-disk.js';

const MEGABYTES = 24;
const POLL_MS = 100;

/** Everything below the store's folder but the filler. */
const stored = async (disk: TinyDisk) => (await readdir(disk.folder, { recursive: true, withFileTypes: true })).filter((f) => f.isFile() && f.name !== 'filler').map((f) => path.join(f.parentPath, f.name)).sort();

describeOnTinyDisk('a film for which the disk has no room', () => {
  let disk: TinyDisk;
  let open: OpenApi;
  let visitor: Visitor;
  let film: Buffer;

  beforeAll(async () => {
    disk = new TinyDisk(MEGABYTES);
    open = await openApi(['Nettle'], disk.folder);
    visitor = await signIn(open.url, 'sef@weirside.example');
    film = await aNoisyFilm();
  }, 60_000);
  afterAll(async () => {
    await open.close();
    disk.remove();
  });

  const url = () => `/api/orders/${open.roads[0]!.order}/images`;
  const upload = () => {
    const form = new FormData();
    form.append('image', new Blob([new Uint8Array(film)], { type: 'image/png' }), 'film.png');
    return visitor.ask({ method: 'POST', url: url(), body: form });
  };

  it.each([['not for its first byte', () => 0], ['only for half of it', () => Math.floor(film.length / 2)]])('%s, is refused with a sentence that says what to do, and nothing of it stays', async (_, room) => {
    const before = { rows: await contentOf(open.owner), files: await stored(disk) };
    await disk.fill(room());
    const complaint = complaintOf(await upload(), 'a film on a full disk');
    await disk.makeRoom();
    expect(complaint.code).toBe('STORAGE_FULL');
    expect(complaint.message).toMatch(/no room.*nothing was changed.*Keep the file.*send it again/s);
    expect({ rows: await contentOf(open.owner), files: await stored(disk) }).toEqual(before);
    // Whoever runs the server finds it in the log.
    expect(open.broken.splice(0)).toMatchObject([{ name: 'StorageFullError' }]);
  });

  it('is taken as soon as there is room', async () => {
    const answer = await upload();
    expect(answer.status).toBe(201);
    expect(await stored(disk)).toContainEqual(expect.stringContaining((answer.body as { image: string }).image.slice(2)));
    expect(open.broken).toEqual([]);
  });
});

describeOnTinyDisk('papers for which the disk has no room', () => {
  let disk: TinyDisk;
  let server: RunningServer;
  let road: Road;

  beforeAll(async () => {
    disk = new TinyDisk(MEGABYTES);
    server = await startServer({ kept: disk.folder });
    road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    await image(road);
    await server.settled();
  }, 90_000);
  afterAll(async () => {
    await server.close();
    disk.remove();
  });

  it('are tried again, shown on the order when that does not help, and printed and mailed once when there is room', async () => {
    await disk.fill();
    await goHome(road);
    const unprinted = () => server.look((tx) => tx.document.findMany({ where: { orderId: road.id, pdfSha: null }, select: { id: true } }));
    const waiting = () => server.look((tx) => tx.message.findMany({ where: { orderId: road.id, documents: { isEmpty: false }, state: { in: ['waiting', 'claimed'] } }, select: { id: true } }));
    const [papers, mails] = [await unprinted(), await waiting()];
    expect([papers.length, mails.length]).toEqual([expect.any(Number), 1]);
    expect(papers.length).toBeGreaterThan(0);

    while (!(await road.look()).problems.some((p) => /paper could not be printed.*full.*make room/i.test(p.words))) await pause(POLL_MS);
    expect(await unprinted()).toEqual(papers);
    expect((await waiting()).map((m) => m.id)).toEqual(mails.map((m) => m.id));
    expect(server.mail.all.filter((m) => m.messageId.includes(mails[0]!.id))).toEqual([]);

    await disk.makeRoom();
    // What the sweep looks for has waited some minutes.
    server.clock.advance({ minutes: 5 });
    await server.sweep();
    while ((await unprinted()).length > 0 || (await waiting()).length > 0) await pause(POLL_MS);
    await server.settled();
    expect(server.mail.all.filter((m) => m.messageId.includes(mails[0]!.id))).toHaveLength(1);
    expect((await road.look()).problems).toEqual([]);
    expect((await stored(disk)).filter((file) => file.includes('incoming'))).toEqual([]);
  }, 150_000);
});

describeOnTinyDisk('a database whose disk has no room', () => {
  let disk: TinyDisk;
  let server: RunningServer;
  const SPACE = 'a_tiny_disk';

  beforeAll(async () => {
    disk = new TinyDisk(MEGABYTES);
    server = await startServer();
  }, 60_000);
  afterAll(async () => {
    await server.close();
    await administer((admin) => admin.query(`DROP TABLESPACE IF EXISTS ${SPACE}`));
    disk.remove();
  });

  const administer = async <T>(work: (admin: pg.Client) => Promise<T>, url = (JSON.parse(process.env.TEST_SERVER!) as { adminUrl: string }).adminUrl) => {
    const admin = new pg.Client(url);
    await admin.connect();
    return work(admin).finally(() => admin.end());
  };

  it('says so instead of breaking; nothing is half written, and the same request is done when there is room', async () => {
    const road = await Road.book(server, { dog: 'Alder', studies: [['elbow', 'threnfold']], inDays: 1 });
    await server.settled();
    const { rows } = await administer((admin) => admin.query<{ data_directory: string }>('SHOW data_directory'));
    const { uid, gid } = await stat(rows[0]!.data_directory);
    await chown(disk.folder, uid, gid);
    await administer((admin) => admin.query(`CREATE TABLESPACE ${SPACE} LOCATION '${disk.folder}'`));
    await administer((admin) => admin.query(`ALTER TABLE fact SET TABLESPACE ${SPACE}`), server.ownerUrl);
    await disk.fill();
    const { id, estimate } = road.visit;
    const request = { key: crypto.randomUUID(), version: road.screen.version };
    const input = { payer: road.dog.person.id, how: 'phone' as const, totalMinor: estimate!.totalMinor };
    const facts = () => server.look((tx) => tx.fact.count({ where: { orderId: road.id } }));
    const before = await facts();
    // A page may have room for some more facts; sooner or later it has not.
    let refused;
    let done = 0;
    for (; !refused && done < 400; done++) {
      const answer = await road.attempt('desk', 'acceptEstimate', id, input, { key: done === 0 ? request.key : crypto.randomUUID(), version: (await road.look('desk')).version });
      if (answer.status !== 200) refused = answer;
    }
    expect(refused?.body).toMatchObject({ code: 'STORAGE_FULL' });
    expect(await facts()).toBe(before + done - 1);
    await disk.makeRoom();
    await road.act('desk', 'acceptEstimate', id, input);
    expect(await facts()).toBe(before + done);
    expect(server.errors.splice(0)).not.toEqual([]);
  }, 90_000);
});
