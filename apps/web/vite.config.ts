import { fileURLToPath } from 'node:url';
import optimizeLocales from '@react-aria/optimize-locales-plugin';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { serviceWorker } from './service-worker-plugin.js';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: at('.'),
  plugins: [{ ...optimizeLocales.vite({ locales: ['en-US', 'en-GB', 'de-DE'] }), enforce: 'pre' }, react(), serviceWorker()],
  resolve: { alias: [{ find: /^#libs\/(.*)$/, replacement: `${at('../../libs')}/$1.ts` }] },
  // Owners come with the phone they have: newer syntax and colours are written down for older ones.
  build: { outDir: at('../../dist/web'), emptyOutDir: true, target: ['es2021', 'safari14'] },
  server: { proxy: { '^/api/(?!.*[.]ts)': 'http://localhost:4180' } },
});
