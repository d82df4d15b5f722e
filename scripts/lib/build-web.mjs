import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import { root } from './root.mjs';
import { run } from './run.mjs';
import { filesBelow, whenChanged } from './stamps.mjs';

/** The web app for the browser, to dist/web. */
export function buildWeb() {
  return whenChanged({
    name: 'web',
    files: [...['apps/web', 'libs/contracts', 'libs/words', 'libs/science/measurement'].flatMap((folder) => filesBelow(folder)), 'package-lock.json'].filter((file) => !/\.test\.tsx?$/.test(file)),
    output: 'dist/web/index.html',
    work: async () => {
      const vite = path.join(root, 'node_modules/vite/bin/vite.js');
      const output = path.join(root, 'dist/web');
      await run(process.execPath, [vite, 'build', '--outDir', output, '--emptyOutDir', '--logLevel', 'warn'], {
        title: 'Building the web app',
        cwd: path.join(root, 'apps/web'),
      });
      await pack(output);
    },
  });
}

/** Texts lie there packed as well, so that a slow line carries a third; browsers take the better kind only over https. */
async function pack(folder) {
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || !/\.(js|css|html|svg|webmanifest)$/.test(entry.name)) continue;
    const file = path.join(entry.parentPath, entry.name);
    const content = await readFile(file);
    await writeFile(`${file}.gz`, gzipSync(content, { level: 9 }));
    await writeFile(`${file}.br`, brotliCompressSync(content, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }));
  }
}
