import path from 'node:path';
import { root } from './root.mjs';
import { run } from './run.mjs';
import { filesBelow, whenChanged } from './stamps.mjs';

/** Prisma's typed client, from prisma/schema; works without a network. */
export function generateClient() {
  return whenChanged({
    name: 'client',
    files: [...filesBelow('prisma/schema'), 'prisma.config.ts', 'node_modules/@prisma/client/package.json'],
    output: 'libs/platform/database/generated/client.ts',
    work: () =>
      run(process.execPath, [path.join(root, 'node_modules/prisma/build/index.js'), 'generate'], {
        title: 'Generating the database client',
        cwd: root,
        // Generating needs no engine, yet a path to one that exists keeps Prisma from downloading it.
        env: { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, CHECKPOINT_DISABLE: '1' },
      }),
  });
}
