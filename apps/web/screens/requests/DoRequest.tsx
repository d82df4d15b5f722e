import { Link } from '@tanstack/react-router';
import { Fragment, useState } from 'react';
import type { DataRequest } from '#libs/contracts/requests';
import { Button, buttonClass } from '../../design/Button.js';
import { Download } from '../../design/Download.js';
import { ErrorBar } from '../../design/Notice.js';
import { t } from '../../words/t.js';
import { useOnRequests, useReload } from './queries.js';
import { HERE, Told } from '../../words/Told.js';

/** What the request asks for, done. */
export function DoRequest({ request }: { request: DataRequest }) {
  const reload = useReload();
  if (request.kind === 'access')
    return (
      <Download path={`/requests/${request.id}/person.zip`} className={buttonClass('ink')} onDone={reload}>
        {t('Make the zip')}
      </Download>
    );
  if (request.kind === 'restriction') return <Once path={`/${request.id}/restricted`} label={t('Restrict from now on')} />;
  if (request.kind === 'objection') return <Once path={`/${request.id}/objected`} label={t('Take out of the statistics')} />;
  return request.kind === 'erasure' ? <Erase request={request} /> : null;
}

function Once({ path, label }: { path: string; label: string }) {
  const on = useOnRequests(path);
  return (
    <>
      <ErrorBar error={on.error} />
      <Button kind="ink" onPress={() => on.mutate({})}>
        {label}
      </Button>
    </>
  );
}

/** Nothing brings the data back, so it is asked once more, beside what stays. */
function Erase({ request }: { request: DataRequest }) {
  const [sure, setSure] = useState(false);
  const on = useOnRequests(`/${request.id}/erased`);
  if (request.heldBy.length > 0)
    return (
      <div className="err">
        <Told
          text={t('**A legal hold keeps this person’s data.** Nothing is erased as long as it stands on {orders}.', { orders: HERE })}
          here={request.heldBy.map((o, i) => (
            <Fragment key={o.order}>
              {i > 0 && ', '}
              <Link to="/orders/$order" params={{ order: o.order }}>
                {o.accession}
              </Link>
            </Fragment>
          ))}
        />
      </div>
    );
  return (
    <>
      <p>{t('Name, mail address, phone and postal address are taken out for good, links stop working, waiting mail is dropped. What stays:')}</p>
      <ul className="kept-list">
        {request.kept.map((k) => (
          <li key={k.what}>
            <b>{t.known(k.what)}.</b> {t.known(k.ground)}
          </li>
        ))}
      </ul>
      <ErrorBar error={on.error} />
      {sure ? (
        <span className="acts">
          <Button kind="ink" onPress={() => on.mutate({})}>
            {t('Erase {person}, nothing brings it back', { person: request.person.name })}
          </Button>
          <Button onPress={() => setSure(false)}>{t('Leave it')}</Button>
        </span>
      ) : (
        <Button onPress={() => setSure(true)}>{t('Erase this person')}</Button>
      )}
    </>
  );
}
