import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildServer, compile } from './build-server.mjs';
import { buildWeb } from './build-web.mjs';
import { startPostgres } from './embedded-postgres.mjs';
import { generateClient } from './generate-client.mjs';
import { root } from './root.mjs';
import { say } from './say.mjs';
import { filesBelow } from './stamps.mjs';
import { prepareTestServer } from './test-server.mjs';

const isBench = (file) => file.endsWith('.bench.ts');

/**
 * Runs test/bench/*.bench.ts against the built program and a PostgreSQL that keeps its promises (fsync on).
 * Each exports run({ row, clone }): row(name, value, unit, ratio) notes one measurement; a ratio is ours ÷ the bare way.
 */
export async function runBenches({ names, json, clone }) {
  await generateClient();
  await Promise.all([buildServer(), buildWeb()]);
  await compile(['test/bench', 'test/support', 'test/medium/queue-support'].flatMap(filesBelow).filter((file) => file.endsWith('.ts')));

  const folder = path.join(root, '.data/bench-pg');
  const postgres = await startPostgres({ folder });
  const { told, release } = await prepareTestServer(postgres, folder);
  process.env.TEST_SERVER = JSON.stringify(told);
  const rows = [];
  try {
    for (const file of filesBelow('test/bench').filter(isBench)) {
      if (names.length && !names.some((name) => path.basename(file).includes(name))) continue;
      say(path.basename(file));
      const { run } = await import(pathToFileURL(path.join(root, 'dist', file.replace(/\.ts$/, '.js'))));
      await run({ clone, row: (name, value, unit, ratio = null) => print(rows, { name, value, unit, ratio }) });
    }
  } finally {
    await release();
  }
  if (json) fs.writeFileSync(json, `${JSON.stringify(rows, null, 2)}\n`);
}

function print(rows, row) {
  rows.push(row);
  const value = Number(row.value.toPrecision(4)).toLocaleString('en');
  console.log(`  ${row.name.padEnd(60)} ${value.padStart(10)} ${row.unit.padEnd(12)} ${row.ratio === null ? '' : `ratio ${row.ratio.toFixed(2)}`}`);
}
