import type { BookingOptions } from '#libs/contracts/booking';
import { Checkbox } from '../../design/Checkboxes.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Select } from '../../design/Select.js';
import { t } from '../../words/t.js';
import type { Draft } from './booking-draft.js';
import type { SaidOption } from '../../design/Select.js';
import { rolesOf } from '../../dog-entry/person-roles.js';

const channels: readonly SaidOption<'mail' | 'post' | 'none'>[] = [
  { id: 'mail', name: 'By mail' },
  { id: 'post', name: 'By post' },
  { id: 'none', name: 'Nothing sent' },
];

type Props = { people: BookingOptions['people']; draft: Draft; onChange: (part: Partial<Draft>) => void; error: (path: string) => string | undefined };

export function PeoplePart({ people, draft, onChange, error }: Props) {
  const set = (addressees: Draft['addressees']) => onChange({ addressees });
  const addressees = error('addressees');
  return (
    <div className="stack">
      <Select label={t('Who pays')} options={people.map((p) => ({ id: p.id, name: p.name, hint: rolesOf(p.roles) }))} value={draft.payer} onChange={(payer) => onChange({ payer })} error={error('payer')} />
      <fieldset data-invalid={addressees ? '' : undefined}>
        <legend className="label">{t('Who gets the result, and how')}</legend>
        <ul className="addressees">
          {people.map((p) => {
            const mine = draft.addressees.find((a) => a.person === p.id);
            return (
              <li key={p.id}>
                <Checkbox label={p.name} value={mine !== undefined} onChange={(on) => set(on ? [...draft.addressees, { person: p.id, channel: p.email ? 'mail' : 'post' }] : draft.addressees.filter((a) => a.person !== p.id))} />
                {mine && <RadioChoice label={t('How {person} gets the result', { person: p.name })} labelHidden options={channels} value={mine.channel} onChange={(c) => c && set(draft.addressees.map((a) => (a.person === p.id ? { ...a, channel: c } : a)))} />}
              </li>
            );
          })}
        </ul>
        {addressees && <span className="field-error">{addressees}</span>}
      </fieldset>
    </div>
  );
}
