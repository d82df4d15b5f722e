import { fileURLToPath } from 'node:url';
import optimizeLocales from '@react-aria/optimize-locales-plugin';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: at('.'),
  plugins: [{ ...optimizeLocales.vite({ locales: ['en-US', 'en-GB'] }), enforce: 'pre' }, react()],
  resolve: { alias: [{ find: /^#libs\/(.*)$/, replacement: `${at('../../libs')}/$1.ts` }] },
  build: { outDir: at('../../dist/web'), emptyOutDir: true, target: 'es2023' },
  server: { proxy: { '/api': 'http://localhost:4180' } },
});
