import { t } from '#libs/words/spoken';
import { badInput } from './step-error.js';
import type { Work } from './work.js';

/** Names are kept in the fact as they are today; an id that this practice does not know is refused. */
export async function personName({ tx }: Work, person: string): Promise<string> {
  const row = await tx.person.findUnique({ where: { id: person }, select: { name: true } });
  if (!row) throw badInput('person', t('This person is not in your register.'));
  return row.name;
}

export async function staffName(work: Work, staff: string): Promise<string> {
  return (await staffNames(work, [staff]))[0]!;
}

export async function staffNames({ tx }: Work, staff: string[]): Promise<string[]> {
  const rows = await tx.staff.findMany({ where: { id: { in: staff } }, select: { id: true, name: true } });
  return staff.map((id) => {
    const row = rows.find((r) => r.id === id);
    if (!row) throw badInput('people', t('One of these people does not work in your practice.'));
    return row.name;
  });
}
