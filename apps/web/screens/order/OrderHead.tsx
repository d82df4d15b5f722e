import { Link } from '@tanstack/react-router';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { useOrderErrand } from '../../api/act.js';
import { Button, buttonClass } from '../../design/Button.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { fullDay } from '../../design/format.js';

export function OrderHead({ screen }: { screen: OrderScreen }) {
  const { dog } = screen;
  const errand = useOrderErrand(screen.id);
  const chip = dog.identifiers.find((i) => i.until === null);
  const mayWait = screen.visits.find((v) => v.step === 'booked' || v.step === 'wanted');
  const people = dog.people.filter((p) => p.until === null && (p.role === 'owner' || p.role === 'breeder' || p.role === 'agent'));
  return (
    <>
      <div className="head">
        <h1>{dog.callName || dog.name}</h1>
        <p>
          <Link to="/dogs/$dog" params={{ dog: dog.id }}>
            {dog.name}
          </Link>
          , {dog.breed}, {dog.sex}
          {dog.neutered && ', neutered'}, born {fullDay(dog.birth.latest)}
        </p>
        <div className="acts">
          <Button onPress={() => errand.mutate({ path: '/owner-link' })}>Send the owner a link</Button>
          {mayWait && (
            <Link to="/waiting" search={{ order: screen.id, visit: mayWait.id, dog: dog.callName || dog.name }} className={buttonClass()}>
              Wants an earlier time
            </Link>
          )}
          <Button onPress={() => window.print()}>Print</Button>
        </div>
      </div>
      <div className="dogline small">
        <span className="num">
          Order <b>{screen.accession}</b>
        </span>
        <span className="num">
          {chip ? (
            <>
              Transponder <b>{chip.shown}</b>, {chip.how === 'scanned' ? 'scanned' : 'typed twice'}
            </>
          ) : (
            'No transponder known'
          )}
        </span>
        {people.map((p) => (
          <span key={p.role + p.person.id}>
            {roleWord[p.role]} <b>{p.person.name}</b>
            {p.role === 'owner' && p.person.phone && `, ${p.person.phone}`}
          </span>
        ))}
        {screen.addressees.length > 0 && <span>Result goes to {screen.addressees.map((a) => `${a.name} (${a.channel === 'none' ? 'nothing sent' : `by ${a.channel}`})`).join(', ')}</span>}
        {screen.payer && (
          <span>
            Paid by <b>{screen.payer}</b>
          </span>
        )}
      </div>
      {errand.isSuccess && <Notice>A fresh link has been mailed to the owner.</Notice>}
      <ErrorBar error={errand.error} />
      {(screen.frozen || screen.silent) && (
        <div className="frozen">
          {screen.frozen && (
            <p>
              <b>The record is kept as it was.</b> Entries from now on are marked as late. Nothing can be changed or erased.
            </p>
          )}
          {screen.silent && <p>Nothing is sent to this family. Mails and bills that were waiting have been stopped.</p>}
        </div>
      )}
    </>
  );
}

const roleWord: Record<string, string> = { owner: 'Owner', breeder: 'Breeder', agent: 'Agent' };
