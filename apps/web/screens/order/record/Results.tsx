import { Link } from '@tanstack/react-router';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { Explained } from '../../../design/explained/Explained.js';
import { Standing } from '../../../design/Standing.js';
import { Earlier } from './Earlier.js';
import { studyName } from '../next-actions.js';
import { momentAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

const states = { waiting: 'waits to be accepted', accepted: 'accepted', refused: 'not taken', withdrawn: 'withdrawn', superseded: 'replaced by a later one', copy: 'the same reading again' } as const satisfies Record<string, PageSentence>;

/** What the centre's readers found; older and doubtful readings stay visible beside the one that stands. */
export function Results({ screen }: { screen: OrderScreen }) {
  const rows = screen.studies.flatMap((study) => study.results.map((result) => ({ study, result })));
  if (rows.length === 0) return null;
  return (
    <Sheet title={t('Results so far')}>
      {screen.studies.filter((s) => s.conflict).map((s) => (
        <p key={s.id}>
          <Link to="/orders/$order/readings/$study" params={{ order: screen.id, study: s.id }}>
            <b>{t('{study}: two results disagree.', { study: studyName(screen, s.id) })}</b>{' '}{t('See them side by side')}
          </Link>
        </p>
      ))}
      <div className="scroll-x" tabIndex={0} role="region" aria-label={t('Results: table')}>
        <table className="tbl">
          <caption className="vh">{t('Results')}</caption>
          <thead>
            <tr>
              <th scope="col">{t('Study')}</th>
              <th scope="col">{t('Each joint')}</th>
              <th scope="col">{t('Dog')}</th>
              <th scope="col">{t('Reading')}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ study, result: r }) => (
              <tr key={r.id}>
                <th scope="row">{studyName(screen, study.id)} <Explained study={study.protocol} /></th>
                <td>
                  {r.joints.map((j) => (
                    <div key={j.joint}>
                      <span className="quiet">{j.name}</span> <span className={j.words.length < 12 ? 'val' : undefined}>{j.words}</span>
                      {j.flags.length > 0 && <span className="quiet">, {j.flags.join(', ')}</span>}
                    </div>
                  ))}
                </td>
                <td>{r.dog}</td>
                <td>
                  <b>{t(states[r.state])}</b>
                  <div className="quiet">
                    {t('{centre}, number {number}, {moment}', { centre: study.centre.name, number: r.ref, moment: momentAt(r.at, screen.practice.zone) })}
                  </div>
                  {r.comment && <div>{t('“{words}”', { words: r.comment })}</div>}
                  {r.room && <div className="quiet">{r.room}</div>}
                  {r.problems.map((p) => (
                    <div key={p} className="warn">
                      {p}
                    </div>
                  ))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {screen.studies.map((s) => s.standing && (
        <section key={s.id} aria-label={t('{study}, among the breed', { study: studyName(screen, s.id) })}>
          <h3 className="among">{t('{study}: among other dogs of the breed, as the letter gave it', { study: studyName(screen, s.id) })}</h3>
          <Standing standing={s.standing} />
        </section>
      ))}
      {screen.studies.map((s) => s.earlier && <Earlier key={s.id} study={studyName(screen, s.id)} earlier={s.earlier} />)}
    </Sheet>
  );
}
