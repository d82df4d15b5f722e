import { QueryClient } from '@tanstack/react-query';
import { isFailure } from './failure.js';

export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: 5_000,
      // A clear answer is not asked for twice; only silence and breakage are.
      retry: (count, error) => count < 2 && (!isFailure(error) || error.status === 0 || error.status >= 500),
    },
  },
});
