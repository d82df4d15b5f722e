import { useState } from 'react';
import type { newPerson } from '#libs/contracts/register';
import type { z } from 'zod';
import { usePeople } from '../api/register.js';
import { Button } from '../design/Button.js';
import { Select } from '../design/Select.js';
import { TextField } from '../design/TextField.js';

export type NewPerson = z.input<typeof newPerson>;
export type Owner = { person: string } | { new: NewPerson };
const channels = [
  { id: 'mail' as const, name: 'By mail' },
  { id: 'post' as const, name: 'By post' },
  { id: 'none' as const, name: 'Nothing is sent' },
];

/** Somebody already known, or somebody new. */
export function OwnerFields({ value, onChange, error }: { value: Owner | undefined; onChange: (owner: Owner | undefined) => void; error: (name: string) => string | undefined }) {
  const [known, setKnown] = useState<string>();
  const fresh: Partial<NewPerson> = value && 'new' in value ? value.new : {};
  const people = usePeople(fresh.name ?? '');
  const near = people.data?.rows ?? [];
  if (value && 'person' in value)
    return (
      <p className="acts">
        <b>{known}</b>, already known here.
        <Button onPress={() => onChange(undefined)}>Another person</Button>
      </p>
    );
  const set = (part: Partial<NewPerson>) => onChange({ new: { ...fresh, ...part } as NewPerson });
  return (
    <>
      <div className="form-row">
        <TextField label="Name" value={fresh.name} onChange={(name) => set({ name })} error={error('name')} autoComplete="off" />
        <TextField label="Phone" type="tel" value={fresh.phone} onChange={(phone) => set({ phone })} error={error('phone')} autoComplete="off" />
        <TextField label="Mail address" type="email" value={fresh.email} onChange={(email) => set({ email })} error={error('email')} autoComplete="off" />
      </div>
      {near.length > 0 && (
        <div className="why small">
          Already known here:{' '}
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
        <TextField label="Address (may stay empty)" value={fresh.address} onChange={(address) => set({ address })} autoComplete="off" />
        <Select label="Gets letters" options={channels} value={fresh.channel ?? 'mail'} onChange={(channel) => set({ channel })} />
      </div>
    </>
  );
}
