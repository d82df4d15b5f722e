import { Link, useParams } from '@tanstack/react-router';
import { useDog } from '../../api/register.js';
import { buttonClass } from '../../design/Button.js';
import { Loading } from '../../design/Empty.js';
import { fullDay } from '../../design/format.js';
import { NotShown } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { AddIdentifier, AddName, AddPerson } from './AddForms.js';
import { AuthoritiesSheet } from './AuthoritiesSheet.js';
import { DatedList } from './DatedList.js';

const precisionWords = { day: '', month: ' (only the month is known)', year: ' (only the year is known)', estimate: ' (estimated)' } as const;
const roleWords: Record<string, string> = { owner: 'owner', coOwner: 'co-owner', breeder: 'breeder', agent: 'agent', payer: 'pays', addressee: 'gets results' };

/** One dog with its dated lists: nothing is overwritten, the older entry stays with its days. */
export function DogScreen() {
  const { dog: id } = useParams({ from: '/inside/dogs/$dog' });
  const { data: dog, error } = useDog(id);
  if (!dog) return error ? <NotShown title="Dog" error={error} /> : <Loading what="the dog" />;
  return (
    <>
      <div className="head">
        <h1>{dog.callName || dog.name}</h1>
        <p>
          {dog.name}, {dog.breed}, {dog.sex}
          {dog.neutered && ', neutered'}
        </p>
        <div className="acts">
          <Link to="/book" search={{ dog: dog.id }} className={buttonClass('ink')}>
            Book a visit
          </Link>
          <Link to="/orders" search={{ q: dog.animalId, show: 'all' }} className={buttonClass()}>
            Orders of this dog
          </Link>
        </div>
      </div>
      <div className="cols two">
        <div className="cols">
          <Sheet title="Numbers">
            <DatedList rows={dog.identifiers.map((i) => ({ what: `${i.shown || 'none'}`, more: `${i.kind}, ${i.how === 'scanned' ? 'scanned' : 'typed twice'}`, from: i.from, until: i.until }))} />
            <AddIdentifier dog={dog} />
          </Sheet>
          <Sheet title="People">
            <DatedList rows={dog.people.map((p) => ({ what: p.person.name, more: [roleWords[p.role] ?? p.role, p.person.phone, p.person.email].filter(Boolean).join(', '), from: p.from, until: p.until }))} />
            <AddPerson dog={dog} />
          </Sheet>
          <AuthoritiesSheet dog={dog} />
        </div>
        <div className="cols">
          <Sheet title="About">
            <dl className="facts">
              <dt>Animal number</dt>
              <dd>{dog.animalId}</dd>
              {dog.merged.map((m) => (
                <div key={m.animalId} style={{ display: 'contents' }}>
                  <dt>Also entered as</dt>
                  <dd>
                    {m.animalId}, merged by {m.by}: {m.why}
                  </dd>
                </div>
              ))}
              <dt>Born</dt>
              <dd>
                {dog.birth.earliest === dog.birth.latest ? fullDay(dog.birth.latest) : `${fullDay(dog.birth.earliest)} to ${fullDay(dog.birth.latest)}`}
                {precisionWords[dog.birth.precision]}
              </dd>
              {dog.died && (
                <>
                  <dt>Died</dt>
                  <dd>{fullDay(dog.died)}</dd>
                </>
              )}
              {dog.studBook.map((s) => (
                <div key={s.book + s.number} style={{ display: 'contents' }}>
                  <dt>{s.book}</dt>
                  <dd>{s.number}</dd>
                </div>
              ))}
              <dt>Sire</dt>
              <dd>{dog.sire ?? 'not known here'}</dd>
              <dt>Dam</dt>
              <dd>{dog.dam ?? 'not known here'}</dd>
            </dl>
          </Sheet>
          <Sheet title="Names">
            <DatedList rows={dog.names.map((n) => ({ what: n.name, more: '', from: n.from, until: null }))} />
            <AddName dog={dog} />
          </Sheet>
        </div>
      </div>
    </>
  );
}
