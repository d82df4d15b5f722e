import type { OrderScreen } from '#libs/contracts/screens/order';
import { timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';

type Exposure = OrderScreen['exposures'][number];

/** One film, as the practice sees it: never the room's estimate of it. */
export function Film({ order, exposure, large, zone }: { order: string; exposure: Exposure; large?: boolean; zone?: string }) {
  const file = `/api/orders/${order}/images/${exposure.image}`;
  const name = t('{view}, attempt {attempt}', { view: exposure.viewName, attempt: exposure.attempt });
  return (
    <figure className={large ? 'film-one film-large' : 'film-one'}>
      {exposure.previewable ? (
        <a href={`${file}/preview`} target="_blank" rel="noreferrer">
          <img src={`${file}/preview`} alt={t('{film}. Opens large.', { film: name })} loading="lazy" />
        </a>
      ) : (
        <p className="no-preview small">{t('This kind of file cannot be shown here. It is kept whole.')}</p>
      )}
      <figcaption>
        <b>{name}</b>
        {zone && <span className="label"> {timeAt(exposure.at, zone)}</span>}
        <a className="small" href={`${file}/file`} download>
          {t('Fetch the file')}
        </a>
      </figcaption>
    </figure>
  );
}
