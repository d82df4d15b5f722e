import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { root } from './root.mjs';

export const migrationFolder = path.join(root, 'prisma/migrations');

/** The migrations in the order they are applied; the checksum is that of the file, as Prisma keeps it. */
export function readMigrations(folder = migrationFolder) {
  if (!fs.existsSync(folder)) return [];
  return fs
    .readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort()
    .map((name) => {
      const sql = fs.readFileSync(path.join(folder, name, 'migration.sql'), 'utf8');
      return { name, sql, checksum: crypto.createHash('sha256').update(sql).digest('hex') };
    });
}
