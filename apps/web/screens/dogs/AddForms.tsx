import { useState, type ReactNode } from 'react';
import { addIdentifier, addPersonRole, personRoles, renameDog, type Dog } from '#libs/contracts/register';
import { useAddToDog, usePeople } from '../../api/register.js';
import { Button } from '../../design/Button.js';
import { DateField } from '../../design/DateField.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { IdentifierFields, identifierMissing } from '../../dog-entry/IdentifierFields.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

const today = () => new Date().toISOString().slice(0, 10);

export function AddName({ dog }: { dog: Dog }) {
  return <Opened label={t('Another name')}>{(close) => <NameForm dog={dog} close={close} />}</Opened>;
}

function NameForm({ dog, close }: { dog: Dog; close: () => void }) {
  const add = useAddToDog(dog.id);
  const entry = useEntry(renameDog, { from: today() });
  const submit = () => {
    const body = entry.check();
    if (body) add.mutate({ what: 'names', body }, { onSuccess: close, onError: entry.mark });
  };
  return (
    <EntryForm label={t('Keep this name')} tries={entry.tries} errors={entry.errors} failure={add.error} busy={add.isPending} onSubmit={submit} beside={<Button onPress={close}>{t('Leave it')}</Button>}>
      <TextField label={t('Name')} {...entry.field('name')} autoFocus />
      <DateField label={t('From')} {...entry.field('from')} />
    </EntryForm>
  );
}

export function AddIdentifier({ dog }: { dog: Dog }) {
  return <Opened label={t('Another number')}>{(close) => <IdentifierForm dog={dog} close={close} />}</Opened>;
}

function IdentifierForm({ dog, close }: { dog: Dog; close: () => void }) {
  const add = useAddToDog(dog.id);
  const entry = useEntry(addIdentifier, { kind: 'transponder', how: 'typedTwice', from: today() });
  const submit = () => {
    const body = entry.check(identifierMissing(entry.values));
    if (body) add.mutate({ what: 'identifiers', body }, { onSuccess: close, onError: entry.mark });
  };
  return (
    <EntryForm label={t('Keep this number')} tries={entry.tries} errors={entry.errors} failure={add.error} busy={add.isPending} onSubmit={submit} beside={<Button onPress={close}>{t('Leave it')}</Button>}>
      <IdentifierFields value={entry.values} onChange={(v) => (['kind', 'value', 'how', 'again'] as const).forEach((k) => entry.set(k, v[k]))} error={entry.error} />
      <DateField label={t('From')} {...entry.field('from')} />
    </EntryForm>
  );
}

export function AddPerson({ dog }: { dog: Dog }) {
  return <Opened label={t('Another person')}>{(close) => <PersonForm dog={dog} close={close} />}</Opened>;
}

const roleNames: Record<(typeof personRoles)[number], PageSentence> = { owner: 'Owner', coOwner: 'Co-owner', breeder: 'Breeder', agent: 'Agent', payer: 'Pays', addressee: 'Gets results' };
const roles = personRoles.map((id) => ({ id, name: roleNames[id] }));

function PersonForm({ dog, close }: { dog: Dog; close: () => void }) {
  const add = useAddToDog(dog.id);
  const [q, setQ] = useState<string>();
  const people = usePeople(q ?? '');
  const entry = useEntry(addPersonRole, { from: today() });
  const submit = () => {
    const body = entry.check();
    if (body) add.mutate({ what: 'people', body }, { onSuccess: close, onError: entry.mark });
  };
  return (
    <EntryForm label={t('Keep this person')} tries={entry.tries} errors={entry.errors} failure={add.error} busy={add.isPending} onSubmit={submit} beside={<Button onPress={close}>{t('Leave it')}</Button>}>
      <TextField label={t('Find the person by name, phone or mail')} value={q} onChange={setQ} autoFocus autoComplete="off" />
      <Select label={t('Person')} options={(people.data?.rows ?? []).map((p) => ({ id: p.id, name: p.name, hint: p.phone ?? p.email ?? '' }))} {...entry.field('person')} placeholder={q ? t('Choose') : t('Find somebody first')} />
      <Select label={t('Is the dog’s')} options={named(roles)} {...entry.field('role')} />
      <DateField label={t('From')} {...entry.field('from')} />
    </EntryForm>
  );
}

function Opened({ label, children }: { label: string; children: (close: () => void) => ReactNode }) {
  const [open, setOpen] = useState(false);
  return <div className="tasks">{open ? children(() => setOpen(false)) : <Button onPress={() => setOpen(true)}>{label}</Button>}</div>;
}
