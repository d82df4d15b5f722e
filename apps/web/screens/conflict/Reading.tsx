import type { StudyView } from '#libs/contracts/screens/order';
import { Sheet } from '../../design/Sheet.js';
import { fullDay, list, momentAt } from '../../design/format.js';
import { t } from '../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

type Result = StudyView['results'][number];

const ways: Record<string, PageSentence> = { post: 'By post', file: 'By file', page: 'On the reader’s page', webhook: 'By message', phone: 'By phone' };

export function Reading({ result: r, differs, zone }: { result: Result; differs: string[]; zone: string }) {
  return (
    <Sheet title={ways[r.channel] ? t(ways[r.channel]!) : r.channel} className="conflict-reading">
      <p className="small quiet">
        {t('Arrived {moment}.', { moment: momentAt(r.at, zone) })}{r.channel === 'post' && ` ${t('Keyed by {people} without seeing each other.', { people: list(r.keyedBy) })}`}
      </p>
      <div className="conflict-pair">
        {r.joints.map((j) => (
          <div key={j.joint}>
            <span className="label">{j.name}</span>
            <div className={j.words.length < 12 ? 'conflict-value' : undefined}>
              {differs.includes(j.joint) && <span className="vh">{t('differs:')}</span>}
              <span className={differs.includes(j.joint) ? 'conflict-differs' : undefined}>{j.words}</span>
            </div>
            {j.flags.length > 0 && <span className="quiet small">{j.flags.join(', ')}</span>}
          </div>
        ))}
      </div>
      <dl className="facts">
        <dt>{t('Reference')}</dt>
        <dd className="num">{r.ref}</dd>
        <dt>{t('Signed or entered by')}</dt>
        <dd>
          {r.by}
          {r.readOn && `, ${fullDay(r.readOn)}`}
        </dd>
        <dt>{t('Dog, date, range')}</dt>
        <dd>{r.problems.length === 0 ? t('agree with the order') : r.problems.join(' ')}</dd>
        {r.comment && (
          <>
            <dt>{t('Comment')}</dt>
            <dd>{t('“{words}”', { words: r.comment })}</dd>
          </>
        )}
      </dl>
    </Sheet>
  );
}
