import type { OrderScreen } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { Table } from '../../../design/Table.js';
import { capital, fullDay, momentAt, plural } from '../../../design/format.js';

/** Packages, sendings, and the clock of what is awaited from the centre. */
export function Sending({ screen }: { screen: OrderScreen }) {
  const zone = screen.practice.zone;
  const rows = screen.studies.flatMap((study) => study.sends.map((send) => ({ study, send })));
  const chased = screen.studies.filter((s) => s.chase !== null);
  const packed = screen.studies.flatMap((study) => study.packages.map((p) => ({ study, p })));
  if (rows.length + chased.length + packed.length === 0) return null;
  return (
    <Sheet title="Sending and waiting">
      <div className="stack">
        {packed.map(({ study, p }) => (
          <p key={p.id} className="small">
            <b>{study.name}:</b> package of {plural(p.films, 'film', 'films')}, sealed {momentAt(p.sealedAt, zone)}. <span className="quiet">Manifest {p.manifest.slice(0, 12)}…</span>
          </p>
        ))}
        {rows.length > 0 && (
          <Table
            caption="Sendings"
            rows={rows}
            rowKey={({ send }) => send.id}
            columns={[
              { head: 'Study', cell: (r) => r.study.name, rowHead: true },
              { head: 'Sent', cell: (r) => momentAt(r.send.at, zone) },
              { head: 'To', cell: (r) => r.send.centre },
              { head: 'Outcome', cell: (r) => `${capital(r.send.outcome)}${r.send.acknowledged ? '; receipt confirmed' : '; receipt not confirmed'}` },
            ]}
          />
        )}
        {chased.map((s) => (
          <p key={s.id} className={s.chase?.overdue ? 'err' : undefined}>
            <b>
              {s.name}: {s.chase?.clock}
            </b>{' '}
            due {s.chase && fullDay(s.chase.dueDay)}
            {s.chase?.overdue && ', and that day is over'}. {s.chase?.act} {s.chase && s.chase.reminders > 0 && `${plural(s.chase.reminders, 'reminder', 'reminders')} sent.`} {s.chase?.cause && `Cause: ${s.chase.cause}.`}
          </p>
        ))}
      </div>
    </Sheet>
  );
}
