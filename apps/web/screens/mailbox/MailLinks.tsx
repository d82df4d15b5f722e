import { Link } from '@tanstack/react-router';
import type { MailboxScreen } from '#libs/contracts/screens/board';
import { dayAt, plural, shortDay, timeAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { addressee } from './mail-document.js';

export function MailLinks({ rows }: { rows: MailboxScreen['rows'] }) {
  const { zone } = useMe();
  return (
    <ul className="mails" aria-label="Messages">
      {rows.map((row) => (
        <li key={row.id}>
          <Link to="/mailbox/$mail" params={{ mail: row.id }}>
            <b>{addressee(row.to).name}</b>
            <span className="small num">
              {shortDay(dayAt(row.at, zone))} {timeAt(row.at, zone)}
            </span>
            <span className="subject">{row.subject}</span>
            {row.attachments > 0 && <span className="label">{plural(row.attachments, 'file', 'files')} attached</span>}
          </Link>
        </li>
      ))}
    </ul>
  );
}
