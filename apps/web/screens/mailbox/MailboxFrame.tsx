import { useState, type ReactNode } from 'react';
import type { MailboxScreen } from '#libs/contracts/screens/board';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { plural } from '../../design/format.js';
import { MailLinks } from './MailLinks.js';
import { addressee } from './mail-document.js';
import { useMailbox } from './queries.js';
import './mailbox.css';

const everybody = '';

/** The list of captured mail with one of them beside it; on a phone the one that is open comes first. */
export function MailboxFrame({ open, children }: { open?: string; children: ReactNode }) {
  const { data, error } = useMailbox();
  const [whose, setWhose] = useState(everybody);
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what="the mailbox" />;
  const shown = data.rows.filter((row) => whose === everybody || addressee(row.to).name === whose);
  return (
    <>
      <div className="head">
        <h1>Mailbox</h1>
        <p>
          {data.captured ? <b>Mail is caught here and never leaves this machine.</b> : 'Mail of this server is sent by its mail server; what was caught before stands here.'} {plural(data.rows.length, 'message', 'messages')}.
        </p>
        {data.rows.length > 0 && (
          <div className="acts">
            <Select label="Show" value={whose} onChange={(name) => setWhose(name ?? everybody)} options={[{ id: everybody, name: 'everybody’s mail' }, ...namesOf(data).map((name) => ({ id: name, name }))]} />
          </div>
        )}
      </div>
      {data.rows.length === 0 ? (
        <Sheet title="Messages">
          <Empty title="No mail has been written yet">{data.captured ? 'Book a visit, and its confirmation comes here within seconds.' : 'Mail goes out by the mail server; nothing is kept here.'}</Empty>
        </Sheet>
      ) : (
        <div className={open ? 'mailbox with-open' : 'mailbox'}>
          <MailLinks rows={shown} />
          <div className="mail">{children}</div>
        </div>
      )}
    </>
  );
}

const namesOf = (data: MailboxScreen) => [...new Set(data.rows.map((row) => addressee(row.to).name))].sort((a, b) => a.localeCompare(b));
