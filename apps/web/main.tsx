import './entry/without-eval.js';
import '@fontsource-variable/noto-sans/standard.css';
import './design/tokens.css';
import './design/base.css';
import './design/controls.css';
import './design/thread.css';
import './design/pieces.css';
import './design/print.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { queryClient } from './api/query-client.js';
import { keepLastSeen } from './offline/last-seen.js';
import { keepSending } from './offline/send-waiting.js';
import { router } from './router.js';
import { browserLanguage, readIn } from './words/t.js';

const root = document.getElementById('root');
if (!root) throw new Error('The page has no place to draw in.');
const draw = () =>
  createRoot(root).render(
    <StrictMode>
      <QueryClientProvider client={queryClient}>
        <RouterProvider router={router} />
      </QueryClientProvider>
    </StrictMode>,
  );
// A device that keeps nothing (a private window) works all the same, as long as there is network.
void keepLastSeen(queryClient).catch(() => undefined).then(() => readIn(browserLanguage())).then(draw);
keepSending();
if ('serviceWorker' in navigator && import.meta.env.PROD) void navigator.serviceWorker.register('/sw.js', { updateViaCache: 'none' });
