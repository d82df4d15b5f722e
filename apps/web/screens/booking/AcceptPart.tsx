import type { BookingOptions } from '#libs/contracts/booking';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Select } from '../../design/Select.js';
import { t } from '../../words/t.js';
import type { Draft } from './booking-draft.js';
import type { SaidOption } from '../../design/Select.js';
import { Told } from '../../words/Told.js';

const ways: readonly SaidOption<'phone' | 'paper'>[] = [
  { id: 'phone', name: 'By phone', byLetter: true },
  { id: 'paper', name: 'On paper', byLetter: true },
];

/** The booking stands without it; then it makes a hold. */
export function AcceptPart({ people, accepted, onChange }: { people: BookingOptions['people']; accepted: Draft['accepted']; onChange: (accepted: Draft['accepted']) => void }) {
  return (
    <>
      <p>
        {accepted.how ? (
          t('Read out and accepted.')
        ) : (
          <Told text={t('**Not accepted yet.** Read it out, then say who accepted and how. It can also be accepted later, by link.')} strong="elder" />
        )}
      </p>
      <div className="form-row">
        <Select label={t('Accepted by')} options={people} value={accepted.by} onChange={(by) => onChange({ ...accepted, by })} />
        <RadioChoice label={t('How')} options={ways} value={accepted.how === 'link' ? undefined : accepted.how} onChange={(how) => onChange({ ...accepted, how })} />
      </div>
    </>
  );
}
