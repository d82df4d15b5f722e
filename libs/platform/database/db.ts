import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { PrismaClient, type Prisma } from './generated/client.js';
import { OrderChanges } from './order-changes.js';

/** What a use case writes through: one transaction, one practice. */
export type Tx = Prisma.TransactionClient;

/** Whose eyes a statement has. */
export type Scope = { practice: string } | { centre: string } | { outside: true } | { system: string };

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;
/** The limit of a transaction does not end a statement that waits for somebody else's; this does, well before it. */
const LOCK_MS = 15_000;
/** On a crowded day a person waits for their turn rather than being refused. */
const LIMITS = { maxWait: 30_000, timeout: 20_000 };

// Dates without a time stay text: a local day must not become a moment in somebody's zone.
pg.types.setTypeParser(pg.types.builtins.DATE, (day: string) => day);

/**
 * The only way to the tables. Every statement runs in a transaction that has taken a role
 * without rights of its own and says for which practice or centre it acts.
 */
export class Db {
  readonly #pool: pg.Pool;
  readonly #prisma: PrismaClient;
  /** Which orders change, told as it happens. */
  readonly changes: OrderChanges;

  constructor(url: string, { connections = 12 } = {}) {
    this.#pool = new pg.Pool({ connectionString: url, max: connections, allowExitOnIdle: true, lock_timeout: LOCK_MS });
    // A connection that breaks while nobody uses it (the database restarted) is dropped and replaced at the next use, which says what is wrong if that fails.
    this.#pool.on('error', () => undefined);
    this.changes = new OrderChanges(url);
    this.#prisma = new PrismaClient({ adapter: new PrismaPg(this.#pool) });
  }

  practice<T>(practice: string, work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.#run({ practice }, work);
  }

  centre<T>(centre: string, work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.#run({ centre }, work);
  }

  /** Before anybody is known: sees what everybody may see. */
  outside<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.#run({ outside: true }, work);
  }

  /** Sees every practice. The worker's login may; the api's is refused by the database. */
  system<T>(reason: string, work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.#run({ system: reason }, work);
  }

  /** One reading statement in the same fences, by the shortest way: for screens that are read often. */
  async read<Row extends object>(scope: Scope, sql: string, values: unknown[] = []): Promise<Row[]> {
    const client = await this.#pool.connect();
    let broken: Error | undefined;
    try {
      await client.query(`BEGIN; SELECT ${fences(scope)}`);
      const { rows } = await client.query<Row>({ text: sql, values, name: sql.length > 200 ? nameOf(sql) : undefined });
      await client.query('COMMIT');
      return rows;
    } catch (error) {
      await client.query('ROLLBACK').catch((rollback: Error) => { broken = rollback; });
      throw error;
    } finally {
      client.release(broken);
    }
  }

  /** The narrow doors before anybody is known; see the migration of that name. */
  async door<Row extends object>(sql: string, values: unknown[] = []): Promise<Row[]> {
    return (await this.#pool.query<Row>(sql, values)).rows;
  }

  /** For the parts that keep small tables of their own, such as the rate limits. */
  get pool(): pg.Pool {
    return this.#pool;
  }

  async close(): Promise<void> {
    await this.changes.close();
    await this.#prisma.$disconnect();
    if (!this.#pool.ended) await this.#pool.end();
  }

  #run<T>(scope: Scope, work: (tx: Tx) => Promise<T>): Promise<T> {
    const enter = `SELECT ${fences(scope)}`;
    return this.#prisma.$transaction(async (tx) => {
      await tx.$executeRawUnsafe(enter);
      return work(tx);
    }, LIMITS);
  }
}

/** The settings of a transaction, as one list of calls. Ids are checked to be ids, so nothing needs quoting. */
function fences(scope: Scope): string {
  const set = (name: string, value: string) => `set_config('${name}', '${value}', true)`;
  if ('practice' in scope) return [set('role', 'app_rls'), set('app.practice', checked(scope.practice)), set('app.centre', '')].join(', ');
  if ('centre' in scope) return [set('role', 'app_rls'), set('app.practice', ''), set('app.centre', checked(scope.centre))].join(', ');
  return [set('role', 'system' in scope ? 'app_system' : 'app_rls'), set('app.practice', ''), set('app.centre', '')].join(', ');
}

function checked(id: string): string {
  if (!UUID.test(id)) throw new Error('A practice or centre is named by its id.');
  return id;
}

const names = new Map<string, string>();
/** Long statements are prepared once per connection. */
function nameOf(sql: string): string {
  let name = names.get(sql);
  if (!name) names.set(sql, (name = `read_${names.size}`));
  return name;
}
