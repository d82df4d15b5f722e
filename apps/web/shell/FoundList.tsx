import { t } from '../words/t.js';
export type Found = { kind: 'order' | 'dog'; id: string; name: string; line: string };

export function FoundList({ id, shown, found, on, asked, go }: { id: string; shown: boolean; found: Found[]; on: number; asked: string; go: (f: Found) => void }) {
  return (
    <div id={id} role="listbox" aria-label={t('Found')} className={shown ? 'found' : undefined} hidden={!shown}>
      {shown &&
        found.map((f, i) => (
          <a
            key={f.kind + f.id}
            id={`${id}-${i}`}
            role="option"
            aria-selected={i === on}
            data-on={i === on || undefined}
            tabIndex={-1}
            href={f.kind === 'order' ? `/orders/${f.id}` : `/dogs/${f.id}`}
            onMouseDown={(e) => e.preventDefault()}
            onClick={(e) => {
              e.preventDefault();
              go(f);
            }}
          >
            <b className="num">{f.name}</b> <span className="small quiet">{f.line}</span>
          </a>
        ))}
      {shown && found.length === 0 && (
        <p className="small" role="option" aria-selected="false" aria-disabled="true">
          <b>{t('Nothing found for “{asked}”.', { asked })}</b>{' '}{t('Other practices’ dogs are never shown here.')}
        </p>
      )}
    </div>
  );
}
