import type { StudyView } from '#libs/contracts/screens/order';
import { Sheet } from '../../design/Sheet.js';
import { fullDay, list, momentAt } from '../../design/format.js';

type Result = StudyView['results'][number];

const ways: Record<string, string> = { post: 'By post', file: 'By file', page: 'On the reader’s page', webhook: 'By message', phone: 'By phone' };

export function Reading({ result: r, differs, zone }: { result: Result; differs: string[]; zone: string }) {
  return (
    <Sheet title={ways[r.channel] ?? r.channel} className="conflict-reading">
      <p className="small quiet">
        Arrived {momentAt(r.at, zone)}.{r.channel === 'post' && ` Keyed by ${list(r.keyedBy)} without seeing each other.`}
      </p>
      <div className="conflict-pair">
        {r.joints.map((j) => (
          <div key={j.joint}>
            <span className="label">{j.name}</span>
            <div className={j.words.length < 12 ? 'conflict-value' : undefined}>
              {differs.includes(j.joint) && <span className="vh">differs: </span>}
              <span className={differs.includes(j.joint) ? 'conflict-differs' : undefined}>{j.words}</span>
            </div>
            {j.flags.length > 0 && <span className="quiet small">{j.flags.join(', ')}</span>}
          </div>
        ))}
      </div>
      <dl className="facts">
        <dt>Reference</dt>
        <dd className="num">{r.ref}</dd>
        <dt>Signed or entered by</dt>
        <dd>
          {r.by}
          {r.readOn && `, ${fullDay(r.readOn)}`}
        </dd>
        <dt>Dog, date, range</dt>
        <dd>{r.problems.length === 0 ? 'agree with the order' : r.problems.join(' ')}</dd>
        {r.comment && (
          <>
            <dt>Comment</dt>
            <dd>“{r.comment}”</dd>
          </>
        )}
      </dl>
    </Sheet>
  );
}
