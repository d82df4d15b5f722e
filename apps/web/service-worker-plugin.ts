import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

/** Fonts of scripts that hardly anybody here writes are fetched when they are needed. */
const KEPT = /\.(js|css)$|noto-sans-latin-(standard|wght)-normal.*\.woff2$/;
const ALSO = ['/', '/icon.svg', '/manifest.webmanifest'];

/** Writes sw.js, which knows every part of this build by name; a build that changes any part is a new set. */
export function serviceWorker(): Plugin {
  return {
    name: 'service-worker',
    apply: 'build',
    // Last of all: other parts of the build take out what turned out to be empty.
    generateBundle: {
      order: 'post',
      async handler(_options, bundle) {
        const parts = [...ALSO, ...Object.keys(bundle).filter((name) => KEPT.test(name)).map((name) => `/${name}`)].sort();
        const source = await readFile(fileURLToPath(new URL('./offline/service-worker.js', import.meta.url)), 'utf8');
        const version = createHash('sha256').update(parts.join()).update(source).digest('hex').slice(0, 16);
        this.emitFile({ type: 'asset', fileName: 'sw.js', source: `self.__VERSION = '${version}';\nself.__PARTS = ${JSON.stringify(parts)};\n${source}` });
      },
    },
  };
}
