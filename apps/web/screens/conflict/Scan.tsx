import { buttonClass } from '../../design/Button.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';

export function Scan({ order, sha, words }: { order: string; sha: string; words: string }) {
  return (
    <Sheet title={t('The sheet that came')} className="conflict-scan">
      <img src={`/api/orders/${order}/images/${sha}/preview`} alt={t('Scan of the posted sheet, keyed as {words}', { words })} />
      <p>
        <a className={buttonClass()} href={`/api/orders/${order}/images/${sha}/file`} target="_blank" rel="noreferrer">
          {t('Open larger')}
        </a>
      </p>
    </Sheet>
  );
}
