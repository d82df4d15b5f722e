import type { Me } from '#libs/contracts/session';
import { tourOf } from './tours.js';
import { t } from '../../words/t.js';

export const TourSteps = ({ me }: { me: Me }) => (
  <ol className="lines tour-steps">
    {tourOf(me).map((stop) => (
      <li key={stop.words}>
        {t(stop.words)} {stop.to && stop.link && <a href={stop.to}>{t(stop.link)}</a>}
      </li>
    ))}
  </ol>
);
