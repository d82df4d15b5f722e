import type { OrderScreen } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { momentAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';

export function Papers({ screen }: { screen: OrderScreen }) {
  if (screen.documents.length === 0) return null;
  return (
    <Sheet title={t('Papers')}>
      <ul className="stack small">
        {screen.documents.map((d) => (
          <li key={d.id}>
            <a href={`/api/orders/${screen.id}/documents/${d.id}`} target="_blank" rel="noreferrer">
              {t.known(d.name)}
            </a>{' '}
            <span className="quiet">
              {momentAt(d.at, screen.practice.zone)}
              {d.state && d.state !== 'valid' && `, ${t.known(d.state)}`}
            </span>
            {d.serial && (
              <>
                {' '}
                <a href={`/c/${d.serial}`} className="num">
                  {d.serial}
                </a>
              </>
            )}
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
