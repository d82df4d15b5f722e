import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const planted = {
  'libs/science/up.ts': ["import '#libs/pathway/rules';", 'floor-of-science'],
  'libs/contracts/up.ts': ["import '../science/up.js';", 'floor-of-contracts'],
  'libs/pathway/rules.ts': ["import type { Way } from '#libs/platform/way';", 'floor-of-pathway'],
  'libs/platform/way.ts': ["import '#libs/register/tables';\nexport type Way = string;", 'floor-of-platform'],
  'libs/register/tables.ts': ["import '@prisma/client';", 'prisma-in-database-only'],
  'libs/steps/tables.ts': ["import '#libs/platform/database/generated/client';", 'prisma-in-database-only'],
  'libs/steps/jobs.ts': ["import 'bullmq';", 'bullmq-in-queue-only'],
  'libs/documents/server.ts': ["import 'fastify';", 'pure-parts-know-no-server'],
  'libs/steps/here.ts': ["import './there.js';", 'no-circle'],
  'apps/api/main.ts': ["import '../worker/main.js';", 'apps-stay-apart'],
  'apps/worker/main.ts': ["import '#seed/main';", 'seed-is-not-imported'],
  'apps/web/main.ts': ["import '#libs/steps/jobs';", 'web-sees-contracts-only'],
  'seed/main.ts': ["import './nowhere.js';", 'resolvable'],
} as const;
const imported = {
  'libs/steps/there.ts': "import './here.js';",
  'libs/platform/database/generated/client.ts': 'export const tables = 1;',
};

interface Report {
  summary: { violations: { from: string; rule: { name: string } }[] };
}

describe('the rules for imports', () => {
  let folder: string;
  let found: string[];

  beforeAll(() => {
    folder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-imports-'));
    for (const file of ['package.json', 'tsconfig.json', '.dependency-cruiser.cjs']) cpSync(path.join(root, file), path.join(folder, file));
    symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'));
    const sources = Object.entries(planted).map(([file, [source]]) => [file, source] as const);
    for (const [file, source] of [...sources, ...Object.entries(imported)]) {
      mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
      writeFileSync(path.join(folder, file), source);
    }
    const program = path.join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
    const { stdout, stderr } = spawnSync(process.execPath, [program, '--config', '.dependency-cruiser.cjs', '--output-type', 'json', 'apps', 'libs', 'seed'], { cwd: folder, encoding: 'utf8' });
    if (!stdout) throw new Error(stderr);
    found = (JSON.parse(stdout) as Report).summary.violations.map(({ from, rule }) => `${from}: ${rule.name}`);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it.each(Object.entries(planted).map(([file, [, rule]]) => [file, rule]))('refuse what %s imports, by %s', (file, rule) => {
    expect(found).toContain(`${file}: ${rule}`);
  });
});
