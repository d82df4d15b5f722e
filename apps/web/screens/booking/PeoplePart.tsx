import type { BookingOptions } from '#libs/contracts/booking';
import { Checkbox } from '../../design/Checkboxes.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Select } from '../../design/Select.js';
import type { Draft } from './booking-draft.js';

const channels = [
  { id: 'mail' as const, name: 'By mail' },
  { id: 'post' as const, name: 'By post' },
  { id: 'none' as const, name: 'Nothing sent' },
];

type Props = { people: BookingOptions['people']; draft: Draft; onChange: (part: Partial<Draft>) => void; error: (path: string) => string | undefined };

export function PeoplePart({ people, draft, onChange, error }: Props) {
  const set = (addressees: Draft['addressees']) => onChange({ addressees });
  const addressees = error('addressees');
  return (
    <div className="stack">
      <Select label="Who pays" options={people.map((p) => ({ id: p.id, name: p.name, hint: p.roles.join(', ') }))} value={draft.payer} onChange={(payer) => onChange({ payer })} error={error('payer')} />
      <fieldset data-invalid={addressees ? '' : undefined}>
        <legend className="label">Who gets the result, and how</legend>
        <ul className="addressees">
          {people.map((p) => {
            const mine = draft.addressees.find((a) => a.person === p.id);
            return (
              <li key={p.id}>
                <Checkbox label={p.name} value={mine !== undefined} onChange={(on) => set(on ? [...draft.addressees, { person: p.id, channel: p.email ? 'mail' : 'post' }] : draft.addressees.filter((a) => a.person !== p.id))} />
                {mine && <RadioChoice label={`How ${p.name} gets the result`} labelHidden options={channels} value={mine.channel} onChange={(c) => c && set(draft.addressees.map((a) => (a.person === p.id ? { ...a, channel: c } : a)))} />}
              </li>
            );
          })}
        </ul>
        {addressees && <span className="field-error">{addressees}</span>}
      </fieldset>
    </div>
  );
}
