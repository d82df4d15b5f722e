import path from 'node:path';
import { root } from './root.mjs';
import { run } from './run.mjs';
import { filesBelow, whenChanged } from './stamps.mjs';

/** The web app for the browser, to dist/web. */
export function buildWeb() {
  return whenChanged({
    name: 'web',
    files: [...filesBelow('apps/web'), ...filesBelow('libs/contracts'), 'package-lock.json'].filter((file) => !/\.test\.tsx?$/.test(file)),
    output: 'dist/web/index.html',
    work: () => {
      const vite = path.join(root, 'node_modules/vite/bin/vite.js');
      const output = path.join(root, 'dist/web');
      return run(process.execPath, [vite, 'build', '--outDir', output, '--emptyOutDir', '--logLevel', 'warn'], {
        title: 'Building the web app',
        cwd: path.join(root, 'apps/web'),
      });
    },
  });
}
