import { Link } from '@tanstack/react-router';
import type { MailboxScreen } from '#libs/contracts/screens/board';
import { dayAt, shortDay, timeAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { addressee } from './mail-document.js';

export function MailLinks({ rows, page }: { rows: MailboxScreen['rows']; page: number }) {
  const { zone } = useMe();
  return (
    <ul className="mails" aria-label={t('Messages')}>
      {rows.map((row) => (
        <li key={row.id}>
          <Link to="/mailbox/$mail" params={{ mail: row.id }} search={page > 1 ? { page } : {}}>
            <b>{addressee(row.to).name}</b>
            <span className="small num">
              {shortDay(dayAt(row.at, zone))} {timeAt(row.at, zone)}
            </span>
            <span className="subject">{row.subject}</span>
            {row.attachments > 0 && <span className="label">{t('{files, plural, one {# file} other {# files}} attached', { files: row.attachments })}</span>}
          </Link>
        </li>
      ))}
    </ul>
  );
}
