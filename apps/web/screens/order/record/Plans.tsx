import type { VisitView } from '#libs/contracts/screens/order';
import { plain, timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { HERE, Told } from '../../../words/Told.js';

/** Signed plans, with the arithmetic as it stood when the vet signed. */
export function Plans({ visit, zone }: { visit: VisitView; zone: string }) {
  return visit.plans.map((p) => (
    <section key={p.id}>
      <h3>
        {p.kind === 'topUp' ? t('Plan for more') : t('Sedation plan')}{' '}
        <span className="beside">
          <Told text={t('for {weight}, signed by {name}, {time}{used, select, no {, not used} other {}}', { weight: HERE, name: p.by, time: timeAt(p.at, zone), used: p.used ? 'yes' : 'no' })} here={<span className="val">{t('{weight} kg', { weight: plain(p.weightKg) })}</span>} />
        </span>
      </h3>
      {p.lines.map((l) => (
        <details key={l.words}>
          <summary>{l.words}</summary>
          <ol className="sums small num">
            {l.steps.map((s) => (
              <li key={s}>{s}</li>
            ))}
          </ol>
        </details>
      ))}
    </section>
  ));
}
