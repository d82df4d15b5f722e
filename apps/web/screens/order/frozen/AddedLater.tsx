import { useState } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Button, buttonClass } from '../../../design/Button.js';
import { Download } from '../../../design/Download.js';
import { momentAt } from '../../../design/format.js';
import { hasRole, useMe } from '../../../shell/me.js';
import { t } from '../../../words/t.js';
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
      <h2 id="added-later">{t('Added later')}</h2>
      {late.length === 0 && <p>{t('Nothing has been added since.')}</p>}
      {late.map((l, i) => (
        <div key={`${l.at}${i}`} className="late-entry">
          <p>{l.what}</p>
          <p className="quiet small">
            {t('{name}. It was {at}; written down {written}, late by {duration}.', { name: l.by, at: momentAt(l.at, zone), written: momentAt(l.rec, zone), duration: lateBy(l.at, l.rec) })}
          </p>
        </div>
      ))}
      {open && visit ? (
        <LateEntryForm screen={screen} visit={visit} onClose={() => setOpen(false)} />
      ) : (
        <div className="acts">
          {mayAdd && <Button onPress={() => setOpen(true)}>{t('Add a late entry')}</Button>}
          {speaker && speaker.id === me.id && (
            <Download path={`/orders/${screen.id}/record.zip`} className={buttonClass()}>
              {t('Export record with its history')}
            </Download>
          )}
        </div>
      )}
      {speaker && speaker.id !== me.id && <p className="small quiet">{t('{name} can take the record out with its history.', { name: speaker.name })}</p>}
    </section>
  );
}
