import { Button } from './Button.js';

export function Pager({ page, more, onPage }: { page: number; more: boolean; onPage: (page: number) => void }) {
  if (page === 1 && !more) return null;
  return (
    <nav className="pager" aria-label="Pages of the list">
      {page > 1 && <Button onPress={() => onPage(page - 1)}>Page before</Button>}
      <span className="num">Page {page}</span>
      {more && <Button onPress={() => onPage(page + 1)}>Next page</Button>}
    </nav>
  );
}
