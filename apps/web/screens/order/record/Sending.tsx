import type { OrderScreen, StudyView } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { optionWords } from '../forms/option-words.js';
import { studyName } from '../next-actions.js';
import { Delivery } from './Delivery.js';
import { Table } from '../../../design/Table.js';
import { fullDay, inside, momentAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { Told } from '../../../words/Told.js';

const clocks: Record<string, PageSentence> = { ack: 'receipt to be confirmed', result: 'result to come' };
const acts: Record<string, PageSentence> = { remind: 'The centre is reminded next.', escalate: 'A named person looks after it now.' };
const outcomes: Record<string, PageSentence> = { handedOver: 'Handed over', unknown: 'Not known whether it left' };

/** Packages, sendings, and the clock of what is awaited from the centre. */
export function Sending({ screen }: { screen: OrderScreen }) {
  const zone = screen.practice.zone;
  const rows = screen.studies.flatMap((study) => study.sends.map((send) => ({ study, send })));
  const chased = screen.studies.filter((s) => s.chase !== null);
  const packed = screen.studies.flatMap((study) => study.packages.map((p) => ({ study, p })));
  if (rows.length + chased.length + packed.length === 0) return null;
  return (
    <Sheet title={t('Sending and waiting')}>
      <div className="stack">
        {packed.map(({ study, p }) => (
          <p key={p.id} className="small">
            <b>{studyName(screen, study.id)}:</b>{' '}{t('package of {films, plural, one {# film} other {# films}}, sealed {moment}.', { films: p.films, moment: momentAt(p.sealedAt, zone) })}{' '}<span className="quiet">{t('Manifest {start}…', { start: p.manifest.slice(0, 12) })}</span>
          </p>
        ))}
        {rows.length > 0 && (
          <Table
            caption={t('Sendings')}
            rows={rows}
            rowKey={({ send }) => send.id}
            columns={[
              { head: t('Study'), cell: (r) => studyName(screen, r.study.id), rowHead: true },
              { head: t('Sent'), cell: (r) => momentAt(r.send.at, zone) },
              { head: t('To'), cell: (r) => r.send.centre },
              { head: t('Outcome'), cell: (r) => t('{outcome}; {confirmed, select, yes {receipt confirmed} other {receipt not confirmed}}', { outcome: outcomes[r.send.outcome] ? t(outcomes[r.send.outcome]!) : optionWords(r.send.outcome), confirmed: r.send.acknowledged ? 'yes' : 'no' }) },
            ]}
          />
        )}
        {rows.map(({ study, send }) => send.delivery && <Delivery key={send.id} zone={zone} delivery={send.delivery} study={studyName(screen, study.id)} />)}
        {chased.map((s) => s.chase && <Chased key={s.id} study={studyName(screen, s.id)} chase={s.chase} />)}
      </div>
    </Sheet>
  );
}

function Chased({ study, chase }: { study: string; chase: NonNullable<StudyView['chase']> }) {
  const clock = clocks[chase.clock];
  const act = acts[chase.act ?? ''];
  return (
    <p className={chase.overdue ? 'err' : undefined}>
      <Told text={t('**{study}: {what},** due {day}{overdue, select, yes {, and that day is over} other {}}.', { study, what: clock ? t(clock) : chase.clock, day: fullDay(chase.dueDay), overdue: chase.overdue ? 'yes' : 'no' })} />{' '}
      {act && t(act)} {chase.reminders > 0 && t('{reminders, plural, one {# reminder} other {# reminders}} sent.', { reminders: chase.reminders })} {chase.cause && t('Cause: {cause}.', { cause: inside(optionWords(chase.cause)) })}
    </p>
  );
}
