import { useDeferredValue, useState } from 'react';
import type { GroupOptions } from '#libs/contracts/group-booking';
import { useDogs } from '../../api/register.js';
import { Button } from '../../design/Button.js';
import { TextField } from '../../design/TextField.js';
import { fullDay } from '../../design/format.js';
import { useTransponderReader } from '../../entry/use-transponder-reader.js';
import { t } from '../../words/t.js';

type Props = { dogs: string[]; known: GroupOptions['dogs']; onDogs: (dogs: string[]) => void; onNewPups: () => void; error: string | undefined };

/** The dogs in the order in which they come; found by name, number, owner or phone, one or all at once. */
export function DogsPart({ dogs, known, onDogs, onNewPups, error }: Props) {
  const [text, setText] = useState<string>();
  const q = useDeferredValue(text?.trim() ?? '');
  const { data } = useDogs(q.length >= 2 ? { q } : {});
  useTransponderReader(setText);
  const found = q.length >= 2 ? (data?.rows.filter((d) => !dogs.includes(d.id)) ?? []) : [];
  const add = (more: string[]) => {
    onDogs([...dogs, ...more]);
    setText(undefined);
  };
  return (
    <div className="stack">
      {dogs.length > 0 && (
        <ol className="dogs-named">
          {dogs.map((id) => {
            const dog = known.find((d) => d.dog === id);
            return (
              <li key={id}>
                <b>{dog?.name ?? '…'}</b> <span className="label num">{dog && [...(dog.registered === dog.name ? [] : [dog.registered]), t('{sex}, born {day}, {transponder}', { sex: t(dog.sex), day: fullDay(dog.born), transponder: dog.transponder || t('no number') })].join(', ')}</span>{' '}
                <Button kind="text" aria-label={t('Take {dog} off', { dog: dog?.name ?? t('this dog') })} onPress={() => onDogs(dogs.filter((d) => d !== id))}>
                  {t('Take off')}
                </Button>
              </li>
            );
          })}
        </ol>
      )}
      <TextField label={dogs.length > 0 ? t('One more: name, transponder, owner or phone') : t('Name, transponder, owner or phone; or scan the dogs')} value={text} onChange={setText} autoFocus={dogs.length === 0} autoComplete="off" error={error} />
      {found.length > 0 && (
        <ul className="stack dog-found">
          {found.length > 1 && (
            <li>
              <Button onPress={() => add(found.map((d) => d.id))}>{t('{count, plural, one {# dog} other {# dogs}} found: name them all', { count: found.length })}</Button>
            </li>
          )}
          {found.slice(0, 8).map((d) => (
            <li key={d.id}>
              <Button onPress={() => add([d.id])}>
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
      {q.length >= 2 && data && found.length === 0 && <p className="small">{t('Nothing more found for “{q}”. Other practices’ dogs are never shown here.', { q })}</p>}
      <div className="acts">
        <Button onPress={onNewPups}>{t('Enter pups of a litter')}</Button>
      </div>
    </div>
  );
}
