import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { readingDueAt } from '#libs/pathway/reading-due';
import { addWorkingDays } from '#libs/pathway/working-days';
import { localDay, nextHour } from '#libs/pathway/zones';
import { Db } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { instantOf, withOffset } from '#libs/steps/record/local-time';
import { dogNamed } from '#seed/demo-scheme';
import { FilmRoom } from '#seed/films';
import { foundScheme } from '#seed/found-scheme';
import { bookDog } from '#seed/roads/book-dog';
import { consentTo } from '#seed/roads/consent-to';
import { halfWritten } from '#test/faults/kills/aftermath';
import { cloneDatabase } from '#test/support/database';
import { aMonday } from '#test/support/running-server';

// In 2026 clocks in Vienna go from 2 to 3 on 29 March and from 3 back to 2 on 25 October (Directive 2000/84/EC: last Sundays, 1:00 UTC).
const ZONE = 'Europe/Vienna';

describe('the hour that is missing in spring and the one that comes twice in autumn', () => {
  it('a reading is due five minutes on, whatever the clock on the wall does', () => {
    expect(readingDueAt('2026-03-29T00:58:00.000Z')).toBe('2026-03-29T01:03:00.000Z');
    expect(withOffset('2026-03-29T01:03:00.000Z', ZONE)).toMatch(/^2026-03-29T03:03/);
    expect(readingDueAt('2026-10-25T00:58:00.000Z')).toBe('2026-10-25T01:03:00.000Z');
    expect(withOffset('2026-10-25T01:03:00.000Z', ZONE)).toMatch(/^2026-10-25T02:03/);
  });

  it('a time that does not exist is told by coming back as another; of one that exists twice the first is meant', () => {
    expect(withOffset(instantOf('2026-03-29', '02:30', ZONE), ZONE)).not.toMatch(/^2026-03-29T02:30/);
    expect(instantOf('2026-10-25', '02:30', ZONE).toISOString()).toBe('2026-10-25T00:30:00.000Z');
  });

  it('a letter that waits for the morning leaves at eight of that morning’s clock', () => {
    expect(nextHour('2026-03-28T21:00:00.000Z', ZONE, 8)).toBe('2026-03-29T06:00:00.000Z');
    expect(nextHour('2026-10-24T20:00:00.000Z', ZONE, 8)).toBe('2026-10-25T07:00:00.000Z');
    expect(localDay('2026-10-25T22:59:00.000Z', ZONE)).toBe('2026-10-25');
  });
});

describe('free days', () => {
  const calendar = { zone: ZONE, holidays: [] as string[] };

  it('of the centre move its due day and leave the practice’s own alone', () => {
    const centre = { ...calendar, holidays: ['2026-12-08'] };
    expect(addWorkingDays('2026-12-07', 1, calendar)).toBe('2026-12-08');
    expect(addWorkingDays('2026-12-07', 1, centre)).toBe('2026-12-09');
  });

  it('that are added later move the day that was counted before', () => {
    expect(addWorkingDays('2026-12-04', 2, calendar)).toBe('2026-12-08');
    expect(addWorkingDays('2026-12-04', 2, { ...calendar, holidays: ['2026-12-08'] })).toBe('2026-12-09');
  });
});

it('a clock that goes back: what is recorded later stays later, and rows say what the facts say', async () => {
  const database = await cloneDatabase();
  const folder = await mkdtemp(path.join(tmpdir(), 'clocks-'));
  const db = new Db(database.workerUrl, { connections: 2 });
  try {
    const scheme = await foundScheme(db, new Date());
    const dog = dogNamed(scheme, 'Flint');
    const at = aMonday();
    const day = new Date(at.getTime() + 86_400_000).toISOString().slice(0, 10);
    const road = await bookDog({ db, files: new DiskFileStore(folder), films: new FilmRoom(), scheme, publicUrl: 'https://cotyla.example' }, { dog, studies: [['elbow', 'threnfold']], at, slot: { day, start: '09:00', minutes: 30, lane: dog.house.lanes[0]! } });
    const booked = road.facts.length;
    road.clock.set(new Date(at.getTime() - 2 * 3_600_000));
    await consentTo(road);
    expect(road.facts.length).toBeGreaterThan(booked);
    const recorded = road.facts.map((f) => f.rec);
    expect(recorded).toEqual([...recorded].sort());
    expect(recorded[booked]! > recorded[booked - 1]!).toBe(true);
    expect(await halfWritten((work) => db.system('a test looks', work), road.clock.now())).toEqual([]);
  } finally {
    await db.close();
    await database.drop();
    await rm(folder, { recursive: true });
  }
}, 60_000);
