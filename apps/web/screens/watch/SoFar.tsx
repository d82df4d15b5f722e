import type { VisitView } from '#libs/contracts/screens/order';
import { Readings } from '../order/record/Readings.js';
import { measures, pointsOf } from './measures.js';
import { SmallChart } from './SmallChart.js';
import { t } from '../../words/t.js';

export function SoFar({ visit, zone }: { visit: VisitView; zone: string }) {
  return (
    <section aria-label={t('So far')} className="so-far">
      <h2>{t('So far')}</h2>
      {visit.readings.length === 0 ? (
        <p className="quiet">{t('No reading yet. The first one is written down beside this.')}</p>
      ) : (
        <>
          <div className="small-charts">
            {measures.map((m) => (
              <SmallChart key={m.name} measure={m} points={pointsOf(visit.readings, m.name)} zone={zone} />
            ))}
          </div>
          <Readings visit={visit} zone={zone} />
        </>
      )}
    </section>
  );
}
