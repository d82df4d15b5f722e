import { useState } from 'react';
import { newDataRequest } from '#libs/contracts/requests';
import { usePeople } from '../../api/register.js';
import { DateField } from '../../design/DateField.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { AddForm } from '../practice/AddForm.js';
import { kindOptions } from './request-words.js';
import { useOnRequests } from './queries.js';

export function NewRequest({ today }: { today: string }) {
  const add = useOnRequests('');
  const [q, setQ] = useState<string>();
  const people = usePeople(q ?? '');
  return (
    <AddForm opens="Enter a request" saves="Start its clock" schema={newDataRequest} start={{ received: today }} add={add}>
      {(entry) => (
        <>
          <TextField label="Find the person by name, phone or mail" value={q} onChange={setQ} autoComplete="off" />
          <Select label="Whose data" options={(people.data?.rows ?? []).map((p) => ({ id: p.id, name: p.name, hint: p.phone ?? p.email ?? '' }))} {...entry.field('person')} placeholder={q ? 'Choose' : 'Find somebody first'} />
          <Select label="What is asked" options={kindOptions} {...entry.field('kind')} />
          <DateField label="Asked on" help="The clock runs from this day." {...entry.field('received')} />
          <TextField label="In the person’s words" lines={2} {...entry.field('asked')} />
        </>
      )}
    </AddForm>
  );
}
