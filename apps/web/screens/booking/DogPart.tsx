import { useDeferredValue, useState } from 'react';
import type { Dog } from '#libs/contracts/register';
import { useDogs } from '../../api/register.js';
import { Button } from '../../design/Button.js';
import { TextField } from '../../design/TextField.js';
import { fullDay } from '../../design/format.js';
import { useTransponderReader } from '../../entry/use-transponder-reader.js';
import { t } from '../../words/t.js';

type Props = { dog: Dog | undefined; onDog: (dog: string | undefined) => void; onNew: () => void; error: string | undefined };

export function DogPart({ dog, onDog, onNew, error }: Props) {
  if (dog) return <Chosen dog={dog} onOther={() => onDog(undefined)} />;
  return <FindDog onDog={onDog} onNew={onNew} error={error} />;
}

function Chosen({ dog, onOther }: { dog: Dog; onOther: () => void }) {
  const chip = dog.identifiers.find((i) => i.until === null);
  const owner = dog.people.find((p) => p.role === 'owner' && p.until === null)?.person;
  return (
    <>
      <div className="dogline" style={{ alignItems: 'baseline', marginBottom: 0 }}>
        <b>{dog.name}</b>
        <span>
          {t('{breed}, {sex}, born {day}', { breed: dog.breed, sex: t(dog.sex), day: fullDay(dog.birth.latest) })}
        </span>
        <span className="num">
          {chip?.shown ?? t('no number')} <span className="quiet">{chip && (chip.how === 'scanned' ? t('scanned') : t('typed twice'))}</span>
        </span>
        <Button onPress={onOther}>{t('Other dog')}</Button>
      </div>
      {owner && (
        <p className="quiet small">
          {t('{owner}, owner', { owner: owner.name })}{owner.phone && `, ${owner.phone}`}
          {owner.email && `, ${owner.email}`}
        </p>
      )}
    </>
  );
}

function FindDog({ onDog, onNew, error }: Omit<Props, 'dog'>) {
  const [text, setText] = useState<string>();
  const q = useDeferredValue(text?.trim() ?? '');
  const { data } = useDogs(q.length >= 2 ? { q } : {});
  useTransponderReader(setText);
  const found = q.length >= 2 ? (data?.rows.slice(0, 6) ?? []) : [];
  return (
    <div className="stack">
      <TextField label={t('Name, transponder, owner or phone; or scan the dog')} value={text} onChange={setText} autoFocus autoComplete="off" error={error} />
      {found.length > 0 && (
        <ul className="stack dog-found" style={{ gap: '.4rem' }}>
          {found.map((d) => (
            <li key={d.id}>
              <Button onPress={() => onDog(d.id)}>
                <span>
                  {d.callName || d.name}{' '}
                  <span className="label num">
                    {d.name}, {d.breed}, {d.transponder || t('no number')}, {d.owner}
                  </span>
                </span>
              </Button>
            </li>
          ))}
        </ul>
      )}
      {q.length >= 2 && data && found.length === 0 && <p className="small">{t('Nothing found for “{q}”. Other practices’ dogs are never shown here.', { q })}</p>}
      <div className="acts">
        <Button onPress={onNew}>{t('New dog')}</Button>
      </div>
    </div>
  );
}
