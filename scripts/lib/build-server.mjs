import fs from 'node:fs';
import path from 'node:path';
import { root } from './root.mjs';
import { filesBelow, whenChanged } from './stamps.mjs';

const PARTS = ['apps/api', 'apps/gateway', 'apps/worker', 'libs', 'seed'];
const SOURCE = /\.ts$/;
const LEFT_OUT = /\.test\.ts$|\.d\.ts$|\.md$/;

/** Compiles the server, file by file, to dist/; files of other kinds are copied beside. */
export function buildServer() {
  const files = PARTS.flatMap(filesBelow).filter((file) => !LEFT_OUT.test(file));
  return whenChanged({
    name: 'server',
    files: [...files, '.swcrc', 'package-lock.json'],
    output: 'dist/libs',
    work: async () => {
      for (const part of ['apps', 'libs', 'seed']) fs.rmSync(path.join(root, 'dist', part), { recursive: true, force: true });
      await compile(files);
    },
  });
}

export async function compile(files) {
  const { transformFile } = await import('@swc/core');
  const configFile = path.join(root, '.swcrc');
  await Promise.all(
    files.map(async (file) => {
      const target = path.join(root, 'dist', file);
      fs.mkdirSync(path.dirname(target), { recursive: true });
      if (!SOURCE.test(file)) return fs.promises.copyFile(path.join(root, file), target);
      const { code } = await transformFile(path.join(root, file), { configFile, cwd: root });
      return fs.promises.writeFile(target.replace(SOURCE, '.js'), code);
    }),
  );
}
