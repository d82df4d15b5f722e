import { Link } from '@tanstack/react-router';
import { buttonClass } from '../../design/Button.js';
import { Loading } from '../../design/Empty.js';
import { Hold, HoldList } from '../../design/Hold.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { dayAt } from '../../design/format.js';
import { hasRole, useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { AccreditationSheet } from './AccreditationSheet.js';
import { CentresSheet } from './CentresSheet.js';
import { EquipmentSheet } from './EquipmentSheet.js';
import { KeysSheet } from './KeysSheet.js';
import { MachinesSheet } from './MachinesSheet.js';
import { PricesSheet } from './PricesSheet.js';
import { ReachableSheet } from './ReachableSheet.js';
import { RoomsSheet } from './RoomsSheet.js';
import { StaffSheet } from './StaffSheet.js';
import { TextsSheet } from './TextsSheet.js';
import { WebhooksSheet } from './WebhooksSheet.js';
import { usePractice } from './queries.js';
import './practice.css';

export function PracticeScreen() {
  const me = useMe();
  const { data: screen, error } = usePractice();
  if (!screen) return error ? <ErrorBar error={error} /> : <Loading what={t('the register')} />;
  const manages = hasRole(me, 'manager');
  const { practice, missing } = screen;
  const today = dayAt(new Date().toISOString(), practice.zone);
  return (
    <>
      <div className="head">
        <h1>{practice.name}</h1>
        <p>
          {practice.address}. {practice.phone}, {practice.email}. {practice.mayCertify ? t('May issue certificates.') : t('Prints statements of a result; the reading centre certifies.')}
        </p>
        <div className="acts">
          <Link to="/practice/closing" className={buttonClass()}>
            {t('Closing the practice')}
          </Link>
        </div>
      </div>
      {missing.length > 0 && (
        <Sheet title={t('Still missing for bookings')}>
          <HoldList>
            {missing.map((words) => (
              <Hold key={words} {...firstSentence(words)} />
            ))}
          </HoldList>
          {!manages && <p className="small quiet">{t('The practice manager enters these.')}</p>}
        </Sheet>
      )}
      <div className="register">
        <div className="stack">
          <StaffSheet screen={screen} edits={manages} />
          <AccreditationSheet screen={screen} edits={manages} today={today} />
          <TextsSheet screen={screen} edits={hasRole(me, 'vet')} />
        </div>
        <div className="stack">
          <RoomsSheet screen={screen} edits={manages} />
          <EquipmentSheet screen={screen} edits={manages} today={today} />
          <MachinesSheet edits={manages} zone={practice.zone} />
          {manages && <KeysSheet zone={practice.zone} />}
          {manages && <WebhooksSheet zone={practice.zone} />}
          <PricesSheet screen={screen} edits={manages} />
          <ReachableSheet edits={manages} />
          <CentresSheet screen={screen} edits={manages} hears={manages || hasRole(me, 'desk')} />
        </div>
      </div>
    </>
  );
}

/** What is missing stands out; who does it, and where, is read after it. */
function firstSentence(words: string): { title: string; rest: string } {
  const end = words.search(/[.;] /) + 1;
  return end === 0 ? { title: words, rest: '' } : { title: words.slice(0, end), rest: words.slice(end).trim() };
}
