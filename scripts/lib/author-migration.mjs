import fs from 'node:fs';
import path from 'node:path';
import { migrationFolder } from './migration-folder.mjs';

const LOCK = `# Kept by the migration tool; please do not edit.
provider = "postgresql"
`;

/** Writes the SQL as a new migration, to be read and completed by hand before it is committed. */
export function authorMigration(name, sql) {
  if (!/^[a-z0-9_]+$/.test(name ?? '')) throw new Error('Name the migration in small letters, digits and underscores: npm run migrations -- author add_rooms');
  const folder = `${new Date().toISOString().replace(/\D/g, '').slice(0, 14)}_${name}`;
  fs.mkdirSync(path.join(migrationFolder, folder), { recursive: true });
  fs.writeFileSync(path.join(migrationFolder, 'migration_lock.toml'), LOCK);
  fs.writeFileSync(path.join(migrationFolder, folder, 'migration.sql'), sql);
  return folder;
}
