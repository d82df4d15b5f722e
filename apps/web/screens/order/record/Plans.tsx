import type { VisitView } from '#libs/contracts/screens/order';
import { timeAt } from '../../../design/format.js';

/** Signed plans, with the arithmetic as it stood when the vet signed. */
export function Plans({ visit, zone }: { visit: VisitView; zone: string }) {
  return visit.plans.map((p) => (
    <section key={p.id}>
      <h3>
        {p.kind === 'topUp' ? 'Plan for more' : 'Sedation plan'}{' '}
        <span className="beside">
          for <span className="val">{p.weightKg} kg</span>, signed by {p.by}, {timeAt(p.at, zone)}
          {p.used ? '' : ', not used'}
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
