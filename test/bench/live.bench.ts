import { randomUUID } from 'node:crypto';
import type { OrderScreen } from '#libs/contracts/screens/order';
import pg from 'pg';
import type { BenchContext } from '../support/bench.js';
import { median } from './support/load.js';
import { openBench } from './support/open-bench.js';

const ROUNDS = 40;

/** Resolves with the moment at which the line tells of this order. */
async function* told(url: string, cookie: string, order: string, stop: AbortSignal): AsyncGenerator<number> {
  const reply = await fetch(`${url}/api/live`, { headers: { cookie }, signal: stop });
  let text = '';
  for await (const part of reply.body!.pipeThrough(new TextDecoderStream())) {
    text += part;
    const blocks = text.split('\n\n');
    text = blocks.pop()!;
    for (const block of blocks) if (block.includes('event: breath')) yield 0; else if (block.includes(order)) yield performance.now();
  }
}

/** From pressing at one desk to the word at the other, beside a bare NOTIFY that another connection hears. */
export async function run({ row }: BenchContext): Promise<void> {
  const ground = await openBench(['Nettle']);
  const [says, hears] = [new pg.Client(ground.database.ownerUrl), new pg.Client(ground.database.ownerUrl)];
  await Promise.all([says.connect(), hears.connect()]);
  const stop = new AbortController();
  try {
    const { cookie, csrf } = await ground.signIn('marit@weirside.example');
    const { order } = ground.roads[0]!;
    const lines = told(ground.url, cookie, order, stop.signal);
    await lines.next();
    const times: number[] = [];
    for (let i = 0; i < ROUNDS; i++) {
      const screen = (await (await fetch(`${ground.url}/api/orders/${order}`, { headers: { cookie } })).json()) as OrderScreen;
      const began = performance.now();
      const acted = fetch(`${ground.url}/api/orders/${order}/actions/confirmAddressees`, { method: 'POST', headers: { cookie, 'x-csrf': csrf, 'content-type': 'application/json' }, body: JSON.stringify({ key: randomUUID(), version: screen.version, on: order, input: { people: [ground.roads[0]!.dog.person.id] } }) });
      let at = 0;
      while (at < began) at = (await lines.next()).value as number;
      times.push(at - began);
      const reply = await acted;
      if (reply.status !== 200) throw new Error(`The action answered ${reply.status}: ${await reply.text()}`);
      await reply.text();
    }
    await hears.query('LISTEN bench');
    await says.query('CREATE TEMP TABLE bare (n int)');
    const bare: number[] = [];
    for (let i = 0; i < ROUNDS; i++) {
      const began = performance.now();
      const heard = new Promise<void>((resolve) => hears.once('notification', () => resolve()));
      await says.query("BEGIN; INSERT INTO bare VALUES (1); SELECT pg_notify('bench', 'x'); COMMIT");
      await heard;
      bare.push(performance.now() - began);
    }
    row('live update, from an action to the other screen ÷ bare INSERT with NOTIFY', median(times), 'ms', median(times) / median(bare));
  } finally {
    stop.abort();
    await Promise.all([says.end(), hears.end()]);
    await ground.close();
  }
}
