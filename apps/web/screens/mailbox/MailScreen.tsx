import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { MailScreen as Mail } from '#libs/contracts/screens/board';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { momentAt, whole } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { MailboxFrame } from './MailboxFrame.js';
import { linkOf, mailDocument } from './mail-document.js';
import { useMail } from './queries.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

export function MailScreen() {
  const { mail: id } = useParams({ from: '/inside/mailbox/$mail' });
  const { data: mail, error } = useMail(id);
  return (
    <MailboxFrame open={id}>
      <p className="back">
        <Link to="/mailbox" search={(old) => old}>{t('All messages')}</Link>
      </p>
      {mail ? <OneMail key={id} mail={mail} /> : error ? <ErrorBar error={error} /> : <Loading what={t('the message')} />}
    </MailboxFrame>
  );
}

const parts = [
  { id: 'seen', name: 'As seen' },
  { id: 'text', name: 'As text' },
] as const satisfies readonly { id: string; name: PageSentence }[];

function OneMail({ mail }: { mail: Mail }) {
  const { zone } = useMe();
  const [part, setPart] = useState<'seen' | 'text'>('seen');
  return (
    <article aria-labelledby="subject">
      <h2 id="subject">{mail.subject}</h2>
      <dl className="facts">
        <dt>{t('To')}</dt>
        <dd>{mail.to}</dd>
        <dt>{t('From')}</dt>
        <dd>{mail.from}</dd>
        <dt>{t('Written')}</dt>
        <dd>{momentAt(mail.at, zone)}</dd>
        {mail.files.length > 0 && (
          <>
            <dt>{t('Attached')}</dt>
            <dd>
              <ul>
                {mail.files.map((file) => (
                  <li key={file.n}>
                    <a href={`/api/mailbox/${mail.id}/files/${file.n}`} target="_blank" rel="noreferrer">
                      {file.name}
                    </a>
                    , {kilobytes(file.size)}
                  </li>
                ))}
              </ul>
            </dd>
          </>
        )}
      </dl>
      {mail.html !== null && <RadioChoice label={t('Part of the message')} labelHidden options={named(parts)} value={part} onChange={(p) => p && setPart(p)} />}
      {mail.html !== null && part === 'seen' ? (
        <iframe className="mail-page" title={t('The message: {subject}', { subject: mail.subject })} sandbox="allow-popups allow-popups-to-escape-sandbox" srcDoc={mailDocument(mail.html)} />
      ) : (
        <pre className="mail-text" tabIndex={0} aria-label={t('The message as text')}>{mail.text}</pre>
      )}
      {mail.links.length > 0 && <Links written={mail.links} />}
    </article>
  );
}

function Links({ written }: { written: string[] }) {
  return (
    <>
      <h3>{t('Links in it')}</h3>
      <ul className="mail-links">
        {written.map((address) => {
          const link = linkOf(address, window.location.origin);
          return <li key={address}>{link ? <a href={link.href} {...(link.here ? {} : { target: '_blank', rel: 'noreferrer' })}>{address}</a> : address}{link && !link.here && <span className="label">{t('leaves this server')}</span>}</li>;
        })}
      </ul>
    </>
  );
}

const kilobytes = (bytes: number) => (bytes < 1024 ? t('{bytes} bytes', { bytes }) : t('{kilobytes} kB', { kilobytes: whole(bytes / 1024) }));
