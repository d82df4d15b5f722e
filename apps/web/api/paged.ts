import type { QueryClient } from '@tanstack/react-query';

/** A change answers with the first page as it is then; another page that is open is asked for anew. Keys end with the page. */
export function keepFirstPage(queries: QueryClient, key: unknown[], first: unknown): void {
  queries.setQueryData([...key, 1], first);
  void queries.invalidateQueries({ queryKey: key, predicate: ({ queryKey }) => queryKey.at(-1) !== 1 });
}
