import type pg from 'pg';

/**
 * Left out: sessions (everybody signs in again), counted tries, and the migrations, whose names the manifest has.
 * The queue is in a schema of its own and is made anew from what is due.
 */
const LEFT_OUT = ['session', 'rate_limits', '_prisma_migrations'];

export interface Table { name: string; columns: string[] }

export async function tablesOf(client: pg.Client): Promise<Table[]> {
  const { rows } = await client.query<Table>(`
    SELECT t.tablename AS name, (SELECT array_agg(c.column_name::text ORDER BY c.ordinal_position) FROM information_schema.columns c WHERE c.table_schema = 'public' AND c.table_name = t.tablename AND c.is_generated = 'NEVER') AS columns
    FROM pg_tables t WHERE t.schemaname = 'public' AND t.tablename <> ALL($1) ORDER BY 1`, [LEFT_OUT]);
  return rows;
}

export async function migrationsOf(client: pg.Client): Promise<{ name: string; checksum: string }[]> {
  const { rows } = await client.query<{ name: string; checksum: string }>('SELECT migration_name AS name, checksum FROM _prisma_migrations WHERE finished_at IS NOT NULL ORDER BY migration_name');
  return rows;
}

export const copyOf = (client: pg.Client, { name, columns }: Table): string => `${client.escapeIdentifier(name)} (${columns.map((c) => client.escapeIdentifier(c)).join(', ')})`;
