import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { systemClock } from '#libs/platform/clock/clock';
import { createBooking } from '#libs/steps/booking/create-booking';
import { estimateOf } from '#libs/steps/booking/estimate-of';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { allNo } from '#seed/roads/book-dog';
import type { Road } from '#seed/roads/road';
import type { BenchContext } from '../support/bench.js';
import { openBench, type BenchGround } from './support/open-bench.js';
import { inTurns } from './support/load.js';

const FIRST_DAY = 20;

/** Books the same dog for one free slot after another. */
function booker({ db }: BenchGround, { house, lane, dog, driver }: Road): () => Promise<string> {
  const centre = driver.scheme.centres.threnfold;
  const { version } = currentProtocols().find((p) => p.code === 'elbow')!;
  const { total } = estimateOf({ prices: house.prices, studies: [{ protocol: 'elbow', version, centre }] });
  let slots = 0;
  return async () => {
    const n = slots++;
    const day = new Date(Date.now() + (FIRST_DAY + Math.floor(n / 24)) * 86_400_000).toISOString().slice(0, 10);
    const minute = 480 + (n % 24) * 20;
    const start = `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
    const { order } = await createBooking({ db, clock: systemClock, publicUrl: 'http://127.0.0.1' }, house.desk, {
      key: randomUUID(), dog: dog.id, payer: dog.person.id, studies: [{ protocol: 'elbow', version, centre: centre.id }],
      slot: { day, start, minutes: 20, room: lane.room, operator: lane.operator.id, nurse: lane.nurse.id, vet: lane.vet.id },
      answers: allNo, answerNotes: {}, addressees: [{ person: dog.person.id, channel: 'mail' }], estimateAccepted: { by: dog.person.id, how: 'phone' }, estimateTotalMinor: total.amountMinor, advice: house.advice.grown,
    });
    return order;
  };
}

/** What one booking leaves behind, table by table, in the order in which it can be written again. */
const TABLES: Record<string, string> = {
  orders: 'id = $1', fact: 'order_id = $1', visit: 'order_id = $1', study: 'order_id = $1', slot: 'order_id = $1', message: 'order_id = $1', audit: 'order_id = $1',
  outbox: "payload->>'message' IN (SELECT id::text FROM message WHERE order_id = $1)",
};
/** Counted up by the database itself. */
const COUNTED = ['seq', 'created_at'];

interface Rows { table: string; columns: string; json: string }

async function rowsOf(owner: pg.Client, order: string): Promise<Rows[]> {
  const all: Rows[] = [];
  for (const [table, where] of Object.entries(TABLES)) {
    const { rows: columns } = await owner.query<{ name: string }>('SELECT column_name AS name FROM information_schema.columns WHERE table_schema = $1 AND table_name = $2', ['public', table]);
    const named = columns.map((c) => c.name).filter((name) => !COUNTED.includes(name) && !(name === 'id' && ['outbox', 'audit'].includes(table)));
    const { rows } = await owner.query<{ json: string }>(`SELECT jsonb_agg(t)::text AS json FROM (SELECT ${named.map((n) => `"${n}"`).join(', ')} FROM ${table} WHERE ${where}) t`, [order]);
    if (rows[0]!.json) all.push({ table, columns: named.map((n) => `"${n}"`).join(', '), json: rows[0]!.json });
  }
  return all;
}

/** The same rows under new ids, a table a statement, in one transaction with the same tenancy. */
function bareBooker(client: pg.Client, practice: string, rows: Rows[]): () => Promise<void> {
  const ids = [...new Set(rows.flatMap((r) => r.json.match(/[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g) ?? []))];
  const own = ids.filter((id) => rows.some((r) => r.json.includes(`"id": "${id}"`)) || rows.some((r) => r.json.includes(`"order_id": "${id}"`)));
  let turn = 0;
  return async () => {
    turn++;
    const fresh = new Map(own.map((id) => [id, randomUUID()]));
    // Slots follow one another from long ago, so that none is taken.
    const [from, until] = [0, 20].map((minutes) => new Date(Date.UTC(1990, 0, 1, turn, minutes)).toISOString());
    const anew = (json: string) => own.reduce((text, id) => text.replaceAll(id, fresh.get(id)!), json)
      .replace(/"period": "[^)]*\)"/g, `"period": "[${from},${until})"`)
      .replace(/"accession": "[^"]*"/, `"accession": "bare ${turn}"`)
      .replace(/"once_key": "/g, `"once_key": "${turn} `);
    await client.query(`BEGIN; SELECT set_config('role', 'app_rls', true), set_config('app.practice', '${practice}', true), set_config('app.centre', '', true)`);
    for (const { table, columns, json } of rows) await client.query({ name: `into ${table}`, text: `INSERT INTO ${table} (${columns}) SELECT ${columns} FROM jsonb_populate_recordset(NULL::${table}, $1::jsonb)`, values: [anew(json)] });
    await client.query('COMMIT');
  };
}

export async function run({ row }: BenchContext): Promise<void> {
  const ground = await openBench(['Nettle']);
  const [owner, client] = [new pg.Client(ground.database.ownerUrl), new pg.Client(ground.database.apiUrl)];
  await Promise.all([owner.connect(), client.connect()]);
  try {
    const road = ground.roads[0]!;
    const book = booker(ground, road);
    const bare = bareBooker(client, road.house.id, await rowsOf(owner, await book()));
    const figures = await inTurns(book, bare, { rounds: 5, each: 20 });
    row('creating a booking ÷ the same rows in one bare transaction', figures.ours, 'bookings/s', figures.ours / figures.bare);
  } finally {
    await Promise.all([owner.end(), client.end()]);
    await ground.close();
  }
}
