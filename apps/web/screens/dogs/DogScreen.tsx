import { Link, useParams } from '@tanstack/react-router';
import { useDog } from '../../api/register.js';
import { buttonClass } from '../../design/Button.js';
import { Loading } from '../../design/Empty.js';
import { fullDay } from '../../design/format.js';
import { NotShown } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { AddIdentifier, AddName, AddPerson } from './AddForms.js';
import { AuthoritiesSheet } from './AuthoritiesSheet.js';
import { DatedList } from './DatedList.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

const precisionWords = { month: '(only the month is known)', year: '(only the year is known)', estimate: '(estimated)' } as const satisfies Record<string, PageSentence>;
const roleWords: Record<string, PageSentence> = { owner: 'owner', coOwner: 'co-owner', breeder: 'breeder', agent: 'agent', payer: 'pays', addressee: 'gets results' };

const roleWord = (role: string) => (roleWords[role] ? t(roleWords[role]) : role);

/** One dog with its dated lists: nothing is overwritten, the older entry stays with its days. */
export function DogScreen() {
  const { dog: id } = useParams({ from: '/inside/dogs/$dog' });
  const { data: dog, error } = useDog(id);
  if (!dog) return error ? <NotShown title={t('Dog')} error={error} /> : <Loading what={t('the dog')} />;
  return (
    <>
      <div className="head">
        <h1>{dog.callName || dog.name}</h1>
        <p>
          {dog.name}, {dog.breed}, {t.known(dog.sex)}
          {dog.neutered && `, ${t('neutered')}`}
        </p>
        <div className="acts">
          <Link to="/book" search={{ dog: dog.id }} className={buttonClass('ink')}>
            {t('Book a visit')}
          </Link>
          <Link to="/orders" search={{ q: dog.animalId, show: 'all' }} className={buttonClass()}>
            {t('Orders of this dog')}
          </Link>
        </div>
      </div>
      <div className="cols two">
        <div className="cols">
          <Sheet title={t('Numbers')}>
            <DatedList rows={dog.identifiers.map((i) => ({ what: i.shown || t('none'), more: `${t.known(i.kind)}, ${i.how === 'scanned' ? t('scanned') : t('typed twice')}`, from: i.from, until: i.until }))} />
            <AddIdentifier dog={dog} />
          </Sheet>
          <Sheet title={t('People')}>
            <DatedList rows={dog.people.map((p) => ({ what: p.person.name, more: [roleWord(p.role), p.person.phone, p.person.email].filter(Boolean).join(', '), from: p.from, until: p.until }))} />
            <AddPerson dog={dog} />
          </Sheet>
          <AuthoritiesSheet dog={dog} />
        </div>
        <div className="cols">
          <Sheet title={t('About')}>
            <dl className="facts">
              <dt>{t('Animal number')}</dt>
              <dd>{dog.animalId}</dd>
              {dog.merged.map((m) => (
                <div key={m.animalId} style={{ display: 'contents' }}>
                  <dt>{t('Also entered as')}</dt>
                  <dd>
                    {t('{number}, merged by {person}: {why}', { number: m.animalId, person: m.by, why: m.why })}
                  </dd>
                </div>
              ))}
              <dt>{t('Born')}</dt>
              <dd>
                {dog.birth.earliest === dog.birth.latest ? fullDay(dog.birth.latest) : t('{from} to {to}', { from: fullDay(dog.birth.earliest), to: fullDay(dog.birth.latest) })}
                {dog.birth.precision !== 'day' && ` ${t(precisionWords[dog.birth.precision])}`}
              </dd>
              {dog.died && (
                <>
                  <dt>{t('Died')}</dt>
                  <dd>{fullDay(dog.died)}</dd>
                </>
              )}
              {dog.studBook.map((s) => (
                <div key={s.book + s.number} style={{ display: 'contents' }}>
                  <dt>{s.book}</dt>
                  <dd>{s.number}</dd>
                </div>
              ))}
              <dt>{t('Sire')}</dt>
              <dd>{dog.sire ?? t('not known here')}</dd>
              <dt>{t('Dam')}</dt>
              <dd>{dog.dam ?? t('not known here')}</dd>
            </dl>
          </Sheet>
          <Sheet title={t('Names')}>
            <DatedList rows={dog.names.map((n) => ({ what: n.name, more: '', from: n.from, until: null }))} />
            <AddName dog={dog} />
          </Sheet>
        </div>
      </div>
    </>
  );
}
