import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState, type ReactNode } from 'react';
import type { MailboxScreen } from '#libs/contracts/screens/board';
import { CsvLink } from '../../design/CsvLink.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Pager } from '../../design/Pager.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { MailLinks } from './MailLinks.js';
import { addressee } from './mail-document.js';
import { useMailbox } from './queries.js';
import './mailbox.css';
import { Told } from '../../words/Told.js';

const everybody = '';

/** The list of captured mail with one of them beside it; on a phone the one that is open comes first. */
export function MailboxFrame({ open, children }: { open?: string; children: ReactNode }) {
  const { page = 1 } = useSearch({ strict: false });
  const navigate = useNavigate();
  const { data, error } = useMailbox(page);
  const [whose, setWhose] = useState(everybody);
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what={t('the mailbox')} />;
  const shown = data.rows.filter((row) => whose === everybody || addressee(row.to).name === whose);
  return (
    <>
      <div className="head">
        <h1>{t('Mailbox')}</h1>
        <p>
          <Told text={data.captured ? t('**Mail is caught here and never leaves this machine.**') : t('Mail of this server is sent by its mail server; what was caught before stands here.')} />{' '}
          {data.more || page > 1 ? t('{count, plural, one {# message} other {# messages}} on this page.', { count: data.rows.length }) : t('{count, plural, one {# message} other {# messages}}.', { count: data.rows.length })}
        </p>
        {data.rows.length > 0 && (
          <div className="acts">
            <Select label={t('Show')} value={whose} onChange={(name) => setWhose(name ?? everybody)} options={[{ id: everybody, name: t('everybody’s mail') }, ...namesOf(data).map((name) => ({ id: name, name }))]} />
            <CsvLink path="/mailbox.csv" />
          </div>
        )}
      </div>
      {data.rows.length === 0 ? (
        <Sheet title={t('Messages')}>
          <Empty title={t('No mail has been written yet')}>{data.captured ? t('Book a visit, and its confirmation comes here within seconds.') : t('Mail goes out by the mail server; nothing is kept here.')}</Empty>
        </Sheet>
      ) : (
        <div className={open ? 'mailbox with-open' : 'mailbox'}>
          <div>
            <MailLinks rows={shown} page={page} />
            <Pager page={page} more={data.more} onPage={(to) => void navigate({ to: '/mailbox', search: to > 1 ? { page: to } : {} })} />
          </div>
          <div className="mail">{children}</div>
        </div>
      )}
    </>
  );
}

const namesOf = (data: MailboxScreen) => [...new Set(data.rows.map((row) => addressee(row.to).name))].sort((a, b) => a.localeCompare(b));
