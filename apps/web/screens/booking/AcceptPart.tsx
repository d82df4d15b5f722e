import type { BookingOptions } from '#libs/contracts/booking';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Select } from '../../design/Select.js';
import type { Draft } from './booking-draft.js';

const ways = [
  { id: 'phone' as const, name: 'By phone', key: 'p' },
  { id: 'paper' as const, name: 'On paper', key: 'a' },
];

/** The booking stands without it; then it makes a hold. */
export function AcceptPart({ people, accepted, onChange }: { people: BookingOptions['people']; accepted: Draft['accepted']; onChange: (accepted: Draft['accepted']) => void }) {
  return (
    <>
      <p>
        {accepted.how ? (
          'Read out and accepted.'
        ) : (
          <>
            <b className="elder">Not accepted yet.</b> Read it out, then say who accepted and how. It can also be accepted later, by link.
          </>
        )}
      </p>
      <div className="form-row">
        <Select label="Accepted by" options={people} value={accepted.by} onChange={(by) => onChange({ ...accepted, by })} />
        <RadioChoice label="How" options={ways} value={accepted.how === 'link' ? undefined : accepted.how} onChange={(how) => onChange({ ...accepted, how })} />
      </div>
    </>
  );
}
