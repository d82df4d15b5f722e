import { Button } from './Button.js';
import { t } from '../words/t.js';

export function Pager({ page, more, onPage }: { page: number; more: boolean; onPage: (page: number) => void }) {
  if (page === 1 && !more) return null;
  return (
    <nav className="pager" aria-label={t('Pages of the list')}>
      {page > 1 && <Button onPress={() => onPage(page - 1)}>{t('Page before')}</Button>}
      <span className="num">{t('Page {page}', { page })}</span>
      {more && <Button onPress={() => onPage(page + 1)}>{t('Next page')}</Button>}
    </nav>
  );
}
