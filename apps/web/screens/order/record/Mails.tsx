import type { OrderScreen } from '#libs/contracts/screens/order';
import { useOrderErrand } from '../../../api/act.js';
import { Button } from '../../../design/Button.js';
import { ErrorBar } from '../../../design/Notice.js';
import { Sheet } from '../../../design/Sheet.js';
import { momentAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

/** Every mail with its outcome. "Not known whether it left" is a state of its own, with two answers. */
export function Mails({ screen }: { screen: OrderScreen }) {
  const errand = useOrderErrand(screen.id);
  if (screen.messages.length === 0) return null;
  return (
    <Sheet title={t('Mail')}>
      <ErrorBar error={errand.error} />
      <ul className="stack small">
        {screen.messages.map((m) => (
          <li key={m.id} className={m.state === 'unknown' || m.state === 'bounced' ? 'err' : undefined}>
            <b>{m.subject || (kindWords[m.kind] ? t(kindWords[m.kind]!) : m.kind)}</b> <span className="quiet">{t('to {address}, {moment}', { address: m.to, moment: momentAt(m.at, screen.practice.zone) })}</span>
            <div>
              {stateWords[m.state] ? t(stateWords[m.state]!) : m.state}
              {m.detail && m.state !== 'delivered' && <span className="quiet"> {m.detail}</span>}
            </div>
            {m.state === 'unknown' && m.kind !== 'letter' && (
              <div className="acts">
                <Button onPress={() => errand.mutate({ path: `/messages/${m.id}/resolve`, body: { arrived: true } })}>{t('It came')}</Button>
                <Button onPress={() => errand.mutate({ path: `/messages/${m.id}/resolve`, body: { arrived: false } })}>{t('Send again')}</Button>
              </div>
            )}
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

/** Until a mail has been written, it has no subject yet. */
const kindWords: Record<string, PageSentence> = {
  confirmation: 'Confirmation of the visit',
  reminder: 'Reminder before the visit',
  consentLink: 'Link for consent',
  ownerLink: 'Link to the owner’s page',
  bill: 'Statement of charges',
  goingHome: 'Going-home sheet',
  package: 'Package to the centre',
  result: 'Letter with the result',
  letter: 'Letter with the result',
};

const stateWords: Record<string, PageSentence> = {
  waiting: 'Waits to be sent.',
  queued: 'Waits to be sent.',
  claimed: 'Being sent.',
  sending: 'Being sent.',
  sent: 'Taken by the mail server.',
  delivered: 'Delivered.',
  bounced: 'Came back.',
  unknown: 'Unknown whether it left. Ask the person, then answer.',
  stopped: 'Not sent: it was stopped.',
  silenced: 'Not sent: nothing is sent to this family.',
};
