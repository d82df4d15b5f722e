import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import { migrationFolder, readMigrations } from './migration-folder.mjs';
import { root } from './root.mjs';
import { schemaAdapter } from './schema-adapter.mjs';

const ENGINE = '@prisma/schema-engine-wasm/schema_engine_bg';
const LOCK_FILE = 'migration_lock.toml';
const filters = { externalTables: [], externalEnums: [] };

// Without it a fault inside the engine shows as "set_message of undefined".
globalThis.PRISMA_WASM_PANIC_REGISTRY = { set_message: (message) => console.error('Schema engine:', message) };

function schemaFiles() {
  const folder = path.join(root, 'prisma/schema');
  const names = fs.readdirSync(folder, { recursive: true }).filter((name) => name.endsWith('.prisma')).sort();
  return names.map((name) => ({ path: path.join(folder, name), content: fs.readFileSync(path.join(folder, name), 'utf8') }));
}

function migrationsList() {
  const lock = path.join(migrationFolder, LOCK_FILE);
  return {
    baseDir: migrationFolder,
    shadowDbInitScript: '',
    lockfile: { path: LOCK_FILE, content: fs.existsSync(lock) ? fs.readFileSync(lock, 'utf8') : null },
    migrationDirectories: readMigrations().map(({ name, sql }) => ({
      path: name,
      migrationFile: { path: 'migration.sql', content: { tag: 'ok', value: sql } },
    })),
  };
}

/** Prisma's schema engine as WebAssembly: it needs no download. For development and CI only. */
export async function openSchemaEngine(url) {
  const binding = await import(ENGINE);
  const wasm = path.join(path.dirname(createRequire(import.meta.url).resolve(ENGINE)), 'schema_engine_bg.wasm');
  const { instance } = await WebAssembly.instantiate(fs.readFileSync(wasm), { './schema_engine_bg.js': binding });
  binding.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start();

  const pools = [];
  const files = schemaFiles();
  const engine = await binding.SchemaEngine.new(
    { datamodels: files.map(({ path: file, content }) => [file, content]) },
    () => {},
    bindMigrationAwareSqlAdapterFactory(schemaAdapter(url, pools)),
  );
  const difference = async (from, to) => {
    const { exitCode, stdout } = await engine.diff({ from, to, script: true, exitCode: true, filters });
    return exitCode === 0 ? undefined : stdout;
  };
  const migrations = { tag: 'migrations', ...migrationsList() };
  return {
    /** SQL that would bring the migrations up to the schema; undefined when they agree. */
    missingInMigrations: () => difference(migrations, { tag: 'schemaDatamodel', files }),
    /** SQL that tells how this database differs from its migrations; undefined when it does not. */
    differenceOfDatabase: () => difference(migrations, { tag: 'schemaDatasource', files, configDir: root }),
    // The engine never closes its pools, and a template database would stay in use.
    close: () => Promise.all(pools.map((pool) => pool.ended || pool.end())),
  };
}
