import type { OrderScreen } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { optionWords } from '../forms/option-words.js';
import { studyName } from '../next-actions.js';
import { Table } from '../../../design/Table.js';
import { fullDay, momentAt, plural } from '../../../design/format.js';

const clocks: Record<string, string> = { ack: 'receipt to be confirmed', result: 'result to come' };
const acts: Record<string, string> = { remind: 'The centre is reminded next.', escalate: 'A named person looks after it now.' };
const outcomes: Record<string, string> = { handedOver: 'Taken by the mail server', unknown: 'Not known whether it left' };

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
            <b>{studyName(screen, study.id)}:</b> package of {plural(p.films, 'film', 'films')}, sealed {momentAt(p.sealedAt, zone)}. <span className="quiet">Manifest {p.manifest.slice(0, 12)}…</span>
          </p>
        ))}
        {rows.length > 0 && (
          <Table
            caption="Sendings"
            rows={rows}
            rowKey={({ send }) => send.id}
            columns={[
              { head: 'Study', cell: (r) => studyName(screen, r.study.id), rowHead: true },
              { head: 'Sent', cell: (r) => momentAt(r.send.at, zone) },
              { head: 'To', cell: (r) => r.send.centre },
              { head: 'Outcome', cell: (r) => `${outcomes[r.send.outcome] ?? optionWords(r.send.outcome)}${r.send.acknowledged ? '; receipt confirmed' : '; receipt not confirmed'}` },
            ]}
          />
        )}
        {chased.map((s) => (
          <p key={s.id} className={s.chase?.overdue ? 'err' : undefined}>
            <b>
              {studyName(screen, s.id)}: {clocks[s.chase?.clock ?? ''] ?? s.chase?.clock},
            </b>{' '}
            due {s.chase && fullDay(s.chase.dueDay)}
            {s.chase?.overdue && ', and that day is over'}. {acts[s.chase?.act ?? '']} {s.chase && s.chase.reminders > 0 && `${plural(s.chase.reminders, 'reminder', 'reminders')} sent.`} {s.chase?.cause && `Cause: ${optionWords(s.chase.cause).toLowerCase()}.`}
          </p>
        ))}
      </div>
    </Sheet>
  );
}
