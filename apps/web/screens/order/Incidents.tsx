import { incidentClosed } from '#libs/contracts/actions/incident';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { useOrderErrand } from '../../api/act.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { momentAt } from '../../design/format.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';

type Incident = OrderScreen['incidents'][number];

/** What went wrong and who answered for it; open until the manager has written what was found and changed. */
export function Incidents({ screen }: { screen: OrderScreen }) {
  const { roles } = useMe();
  if (screen.incidents.length === 0) return null;
  return (
    <Sheet title={t('Incidents')}>
      {screen.incidents.map((i) => (
        <div key={i.id}>
          <p>
            <b>{i.what}</b> <span className="quiet">{t('Opened {moment}, {name}.', { moment: momentAt(i.openedAt, screen.practice.zone), name: i.openedBy })}</span>
          </p>
          {i.closedAt ? (
            <p>
              {i.words} <span className="quiet">{t('Closed {moment}, {name}.', { moment: momentAt(i.closedAt, screen.practice.zone), name: i.closedBy ?? '' })}</span>
            </p>
          ) : roles.includes('manager') ? (
            <CloseForm order={screen.id} incident={i} />
          ) : (
            <p className="quiet">{t('It is open: the manager writes down what was found and what was changed.')}</p>
          )}
        </div>
      ))}
    </Sheet>
  );
}

function CloseForm({ order, incident }: { order: string; incident: Incident }) {
  const errand = useOrderErrand(order);
  const entry = useEntry(incidentClosed);
  return (
    <EntryForm
      label={t('Close the incident')}
      tries={entry.tries}
      errors={entry.errors}
      failure={errand.error}
      busy={errand.isPending}
      onSubmit={() => {
        const body = entry.check();
        if (body) errand.mutate({ path: `/incidents/${incident.id}/close`, body });
      }}
    >
      <TextField label={t('What was found, and what was changed')} lines={3} {...entry.field('words')} />
    </EntryForm>
  );
}
