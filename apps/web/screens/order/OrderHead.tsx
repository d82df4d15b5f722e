import { Link } from '@tanstack/react-router';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { useOrderErrand } from '../../api/act.js';
import { Button, buttonClass } from '../../design/Button.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { fullDay } from '../../design/format.js';
import { hasRole, useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { Told } from '../../words/Told.js';

export function OrderHead({ screen }: { screen: OrderScreen }) {
  const { dog } = screen;
  const me = useMe();
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
          , {[dog.breed, t(dog.sex), dog.neutered && t('neutered'), t('born {day}', { day: fullDay(dog.birth.latest) })].filter(Boolean).join(', ')}
        </p>
        <div className="acts">
          <Button onPress={() => errand.mutate({ path: '/owner-link' })}>{t('Send the owner a link')}</Button>
          {mayWait && (
            <Link to="/waiting" search={{ order: screen.id, visit: mayWait.id, dog: dog.callName || dog.name }} className={buttonClass()}>
              {t('Wants an earlier time')}
            </Link>
          )}
          {(hasRole(me, 'desk') || hasRole(me, 'manager')) && (
            <Link to="/orders/$order/fees" params={{ order: screen.id }} className={buttonClass()}>
              {t('Fees')}
            </Link>
          )}
          <Button onPress={() => window.print()}>{t('Print')}</Button>
        </div>
      </div>
      <div className="dogline small">
        <span className="num">
          {t('Order')}{' '}<b>{screen.accession}</b>
        </span>
        <span className="num">
          {chip ? (
            <>
              {t('Transponder')}{' '}<b>{chip.shown}</b>, {chip.how === 'scanned' ? t('scanned') : t('typed twice')}
            </>
          ) : (
            t('No transponder known')
          )}
        </span>
        {people.map((p) => (
          <span key={p.role + p.person.id}>
            {roleWord[p.role] && t(roleWord[p.role]!)} <b>{p.person.name}</b>
            {p.role === 'owner' && p.person.phone && `, ${p.person.phone}`}
          </span>
        ))}
        {screen.addressees.length > 0 && <span>{t('Result goes to {people}', { people: screen.addressees.map((a) => t('{name} ({channel, select, none {nothing sent} post {by post} other {by mail}})', { name: a.name, channel: a.channel })).join(', ') })}</span>}
        {screen.payer && (
          <span>
            <Told text={t('Paid by **{name}**', { name: screen.payer })} />
          </span>
        )}
      </div>
      {errand.isSuccess && <Notice>{t('A fresh link has been mailed to the owner.')}</Notice>}
      <ErrorBar error={errand.error} />
      {(screen.frozen || screen.silent) && (
        <div className="frozen">
          {screen.frozen && (
            <p>
              <Told text={t('**The record is kept as it was.** Entries from now on are marked as late. Nothing can be changed or erased.')} />
            </p>
          )}
          {screen.silent && <p>{t('Nothing is sent to this family. Mails and bills that were waiting have been stopped.')}</p>}
        </div>
      )}
    </>
  );
}

const roleWord: Record<string, PageSentence> = { owner: 'Owner', breeder: 'Breeder', agent: 'Agent' };
