import { useState } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Button, buttonClass } from '../../../design/Button.js';
import { momentAt } from '../../../design/format.js';
import { hasRole, useMe } from '../../../shell/me.js';
import { lateBy } from './late-by.js';
import { LateEntryForm } from './LateEntryForm.js';

/** Entries that came after the record was frozen, and the way to add one; the record leaves with the person who answers for it. */
export function AddedLater({ screen }: { screen: OrderScreen }) {
  const me = useMe();
  const [open, setOpen] = useState(false);
  const { zone } = screen.practice;
  const late = screen.calm?.late ?? [];
  const visit = screen.visits.at(-1);
  const mayAdd = visit && (['nurse', 'vet', 'radiographer'] as const).some((role) => hasRole(me, role));
  const speaker = screen.calm?.caseOwner;
  return (
    <section aria-labelledby="added-later">
      <h2 id="added-later">Added later</h2>
      {late.length === 0 && <p>Nothing has been added since.</p>}
      {late.map((l, i) => (
        <div key={`${l.at}${i}`} className="late-entry">
          <p>{l.what}</p>
          <p className="quiet small">
            {l.by}. It was {momentAt(l.at, zone)}; written down {momentAt(l.rec, zone)}, late by {lateBy(l.at, l.rec)}.
          </p>
        </div>
      ))}
      {open && visit ? (
        <LateEntryForm screen={screen} visit={visit} onClose={() => setOpen(false)} />
      ) : (
        <p className="acts">
          {mayAdd && <Button onPress={() => setOpen(true)}>Add a late entry</Button>}
          {speaker && speaker.id === me.id && (
            <a className={buttonClass()} href={`/api/orders/${screen.id}/record.zip`} download>
              Export record with its history
            </a>
          )}
        </p>
      )}
      {speaker && speaker.id !== me.id && <p className="small quiet">{speaker.name} can take the record out with its history.</p>}
    </section>
  );
}
