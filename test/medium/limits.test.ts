import pg from 'pg';
import { LIMITS, Limits, TooManyTriesError } from '#libs/platform/limits/limits';
import { cloneDatabase, type TestDatabase } from '#test/support/database';

const TABLE = 'limits_of_this_test';
let database: TestDatabase;
let pools: pg.Pool[];

beforeAll(async () => {
  database = await cloneDatabase();
  pools = [1, 2].map(() => new pg.Pool({ connectionString: database.ownerUrl }));
  await pools[0]!.query(`CREATE TABLE ${TABLE} (key varchar(255) PRIMARY KEY, points integer NOT NULL DEFAULT 0, expire bigint)`);
});
afterAll(async () => {
  for (const pool of pools) await pool.end();
  await database.drop();
});

it('the limits count over all processes that share the database, and keep neither address nor name', async () => {
  const [one, other] = pools.map((pool) => new Limits({ pool, table: TABLE })) as [Limits, Limits];
  for (let i = 0; i < LIMITS.signIn.points; i++) await (i % 2 ? one : other).trySignIn('192.0.2.7', 'ona');
  await expect(one.trySignIn('192.0.2.7', 'ona')).rejects.toThrow(TooManyTriesError);
  await expect(other.trySignIn('192.0.2.7', 'ona')).rejects.toThrow(TooManyTriesError);
  await other.signedIn('192.0.2.7', 'ona');
  await expect(one.trySignIn('192.0.2.7', 'ona')).resolves.toBeUndefined();
  const { rows } = await pools[0]!.query(`SELECT * FROM ${TABLE}`);
  expect(JSON.stringify(rows)).not.toMatch(/192\.0|ona/);
});
