import { createHash } from 'node:crypto';
import cookie from '@fastify/cookie';
import fastify from 'fastify';
import pg from 'pg';
import { SCREEN } from '#libs/steps/order-screen/screen-sql';
import type { BenchContext } from '../support/bench.js';
import { CONNECTIONS, openBench } from './support/open-bench.js';
import { requestsPerSecond } from './support/load.js';

/** The same statements with nothing around them: who asks, the transaction with its tenancy, and the screen's one SELECT, passed on as it comes. */
async function bare(databaseUrl: string) {
  const pool = new pg.Pool({ connectionString: databaseUrl, max: CONNECTIONS });
  const server = fastify();
  await server.register(cookie);
  server.get<{ Params: { order: string } }>('/api/orders/:order', async (request, reply) => {
    const hash = createHash('sha256').update(request.cookies.cotyla ?? '').digest('hex');
    const { rows: [session] } = await pool.query<{ who: { staff: string; practice: string } }>('SELECT app.session_row($1) AS who', [hash]);
    const { staff, practice } = session!.who;
    const client = await pool.connect();
    try {
      await client.query(`BEGIN; SELECT set_config('role', 'app_rls', true), set_config('app.practice', '${practice}', true), set_config('app.centre', '', true)`);
      const { rows } = await client.query({ name: 'screen', text: SCREEN, values: [request.params.order, staff, 'desk', practice] });
      await client.query('COMMIT');
      return await reply.send(rows[0]);
    } finally {
      client.release();
    }
  });
  const url = await server.listen({ port: 0, host: '127.0.0.1' });
  return { url, close: async () => { await server.close(); await pool.end(); } };
}

export async function run({ row }: BenchContext): Promise<void> {
  const ground = await openBench(['Heron', 'Nettle']);
  const plain = await bare(ground.database.apiUrl);
  try {
    const { cookie: session } = await ground.signIn('marit@weirside.example');
    for (const [dog, what] of [['Nettle', 'a booked order'], ['Heron', 'an order with two studies, reported']] as const) {
      const path = `/api/orders/${ground.roads.find((r) => r.dog.call === dog)!.order}`;
      const { ours, ratio } = await requestsPerSecond(ground.url + path, plain.url + path, { cookie: session });
      row(`reading ${what} ÷ bare Fastify + pg`, ours, 'requests/s', ratio);
    }
  } finally {
    await plain.close();
    await ground.close();
  }
}
