import { rowWords, type Exposure, type ViewRow } from './view-rows.js';
import { t } from '../../words/t.js';

type Props = { rows: readonly ViewRow[]; next: ViewRow | undefined; shown: Exposure | undefined; onShow: (film: string) => void };

/** The views as the thread has them: filled when accepted, a ring where a hand is, thin for what is to come. */
export function ViewThread({ rows, next, shown, onShow }: Props) {
  return (
    <ol className="hang views">
      {rows.map((row) => (
        <li key={row.view} className={row.state === 'accepted' ? undefined : row.state === 'waits' || row === next ? 'now' : 'to'}>
          {row.name} {!row.required && <span className="label">{t('may be left out')}</span>}
          <span className="by">{rowWords(row)}</span>
          {row.films.length > 0 && (
            <span className="attempts" role="group" aria-label={t('Pictures of {view}', { view: row.name })}>
              {row.films.map((f, i) => (
                <button key={f.id} type="button" aria-pressed={f.id === shown?.id} onClick={() => onShow(f.id)}>
                  {t('Attempt {number}', { number: i + 1 })}
                </button>
              ))}
            </span>
          )}
        </li>
      ))}
    </ol>
  );
}
