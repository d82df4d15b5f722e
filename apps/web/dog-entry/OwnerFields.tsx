import { asLanguage, languageCodes, languages } from '#libs/words/languages';
import { useState } from 'react';
import type { newPerson } from '#libs/contracts/register';
import type { z } from 'zod';
import { usePeople } from '../api/register.js';
import { Button } from '../design/Button.js';
import { Select } from '../design/Select.js';
import { TextField } from '../design/TextField.js';
import { t } from '../words/t.js';
import type { SaidOption } from '../design/Select.js';
import { Told } from '../words/Told.js';

export type NewPerson = z.input<typeof newPerson>;
export type Owner = { person: string } | { new: NewPerson };
const channels: readonly SaidOption<'mail' | 'post' | 'none'>[] = [
  { id: 'mail', name: 'By mail' },
  { id: 'post', name: 'By post' },
  { id: 'none', name: 'Nothing is sent' },
];

const spoken = languageCodes.map((id) => ({ id, name: languages[id].name }));

/** Somebody already known, or somebody new. */
export function OwnerFields({ value, onChange, error }: { value: Owner | undefined; onChange: (owner: Owner | undefined) => void; error: (name: string) => string | undefined }) {
  const [known, setKnown] = useState<string>();
  const fresh: Partial<NewPerson> = value && 'new' in value ? value.new : {};
  const people = usePeople(fresh.name ?? '');
  const near = people.data?.rows ?? [];
  if (value && 'person' in value)
    return (
      <p className="acts">
        <span><Told text={t('**{name}**, already known here.', { name: known ?? '' })} /></span>
        <Button onPress={() => onChange(undefined)}>{t('Another person')}</Button>
      </p>
    );
  const set = (part: Partial<NewPerson>) => onChange({ new: { ...fresh, ...part } as NewPerson });
  return (
    <>
      <div className="form-row">
        <TextField label={t('Name')} value={fresh.name} onChange={(name) => set({ name })} error={error('name')} autoComplete="off" />
        <TextField label={t('Phone')} type="tel" value={fresh.phone} onChange={(phone) => set({ phone })} error={error('phone')} autoComplete="off" />
        <TextField label={t('Mail address')} type="email" value={fresh.email} onChange={(email) => set({ email })} error={error('email')} autoComplete="off" />
      </div>
      {near.length > 0 && (
        <div className="why small">
          {t('Already known here:')}{' '}
          <span className="acts">
            {near.slice(0, 5).map((p) => (
              <Button
                key={p.id}
                onPress={() => {
                  setKnown(p.name);
                  onChange({ person: p.id });
                }}
              >
                {p.name}
                {p.phone && `, ${p.phone}`}
              </Button>
            ))}
          </span>
        </div>
      )}
      <div className="form-row">
        <TextField label={t('Address (may stay empty)')} value={fresh.address} onChange={(address) => set({ address })} autoComplete="off" />
        <Select label={t('Gets letters')} options={channels} value={fresh.channel ?? 'mail'} onChange={(channel) => set({ channel })} />
        <Select label={t('Is written to in')} options={spoken} value={asLanguage(fresh.language)} onChange={(language) => set({ language })} />
      </div>
    </>
  );
}
