import { Empty, Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { NewRequest } from './NewRequest.js';
import { RequestSheet } from './RequestSheet.js';
import { useRequests } from './queries.js';
import './requests.css';

/** What people ask about their own data, each with its clock; for the practice manager. */
export function RequestsScreen() {
  const { data, error } = useRequests();
  if (!data) return error ? <NotShown title="Data requests" error={error} /> : <Loading what="the requests" />;
  const open = data.rows.filter((r) => !r.closed);
  const closed = data.rows.filter((r) => r.closed);
  return (
    <>
      <div className="head">
        <h1>Data requests</h1>
        <p>People ask what is kept about them, and what becomes of it. A month to answer; your own law may ask for less.</p>
      </div>
      <NewRequest today={data.today} />
      <div className="requests">
        {data.rows.length === 0 && <Empty title="Nobody has asked yet">When somebody asks by letter, by mail or at the desk, enter it here on the same day.</Empty>}
        {open.map((r) => (
          <RequestSheet key={r.id} request={r} zone={data.zone} />
        ))}
        {closed.length > 0 && (
          <details>
            <summary>Closed requests ({closed.length})</summary>
            {closed.map((r) => (
              <RequestSheet key={r.id} request={r} zone={data.zone} />
            ))}
          </details>
        )}
      </div>
    </>
  );
}
