import { Link } from '@tanstack/react-router';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { Earlier } from './Earlier.js';
import { studyName } from '../next-actions.js';
import { momentAt } from '../../../design/format.js';

const states = { waiting: 'waits to be accepted', accepted: 'accepted', refused: 'not taken', withdrawn: 'withdrawn', superseded: 'replaced by a later one', copy: 'the same reading again' } as const;

/** What the centre's readers found; older and doubtful readings stay visible beside the one that stands. */
export function Results({ screen }: { screen: OrderScreen }) {
  const rows = screen.studies.flatMap((study) => study.results.map((result) => ({ study, result })));
  if (rows.length === 0) return null;
  return (
    <Sheet title="Results so far">
      {screen.studies.filter((s) => s.conflict).map((s) => (
        <p key={s.id}>
          <Link to="/orders/$order/readings/$study" params={{ order: screen.id, study: s.id }}>
            <b>{studyName(screen, s.id)}: two results disagree.</b> See them side by side
          </Link>
        </p>
      ))}
      <div className="scroll-x" tabIndex={0} role="region" aria-label="Results: table">
        <table className="tbl">
          <caption className="vh">Results</caption>
          <thead>
            <tr>
              <th scope="col">Study</th>
              <th scope="col">Each joint</th>
              <th scope="col">Dog</th>
              <th scope="col">Reading</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ study, result: r }) => (
              <tr key={r.id}>
                <th scope="row">{studyName(screen, study.id)}</th>
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
                  <b>{states[r.state]}</b>
                  <div className="quiet">
                    {study.centre.name}, number {r.ref}, {momentAt(r.at, screen.practice.zone)}
                  </div>
                  {r.comment && <div>“{r.comment}”</div>}
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
      {screen.studies.map((s) => s.earlier && <Earlier key={s.id} study={studyName(screen, s.id)} earlier={s.earlier} />)}
    </Sheet>
  );
}
