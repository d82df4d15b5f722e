import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { DataRequest } from '#libs/contracts/requests';
import { Button, buttonClass } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { list } from '../../design/format.js';
import { useOnRequests, useReload } from './queries.js';

/** What the request asks for, done. */
export function DoRequest({ request }: { request: DataRequest }) {
  const reload = useReload();
  if (request.kind === 'access')
    return (
      <a className={buttonClass('ink')} href={`/api/requests/${request.id}/person.zip`} download onClick={reload}>
        Make the zip
      </a>
    );
  if (request.kind === 'restriction') return <Once path={`/${request.id}/restricted`} label="Restrict from now on" />;
  if (request.kind === 'objection') return <Once path={`/${request.id}/objected`} label="Take out of the statistics" />;
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
        <b>A legal hold keeps this person’s data.</b> Nothing is erased as long as it stands on{' '}
        {request.heldBy.map((o) => (
          <Link key={o.order} to="/orders/$order" params={{ order: o.order }}>
            {o.accession}
          </Link>
        ))}
        .
      </div>
    );
  return (
    <>
      <p>Name, mail address, phone and postal address are taken out for good, links stop working, waiting mail is dropped. What stays:</p>
      <ul className="kept-list">
        {request.kept.map((k) => (
          <li key={k.what}>
            <b>{k.what}.</b> {k.ground}
          </li>
        ))}
      </ul>
      <ErrorBar error={on.error} />
      {sure ? (
        <span className="acts">
          <Button kind="ink" onPress={() => on.mutate({})}>
            Erase {list([request.person.name])}, nothing brings it back
          </Button>
          <Button onPress={() => setSure(false)}>Leave it</Button>
        </span>
      ) : (
        <Button onPress={() => setSure(true)}>Erase this person</Button>
      )}
    </>
  );
}
