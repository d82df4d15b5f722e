import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useGroups } from '../../api/groups.js';
import { Sheet } from '../../design/Sheet.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import '../booking/booking.css';
import { GroupForm } from './GroupForm.js';
import './litter.css';
import { NewPups } from './NewPups.js';

/** Several dogs in one call: a litter, or all that somebody owns. */
export function LitterScreen() {
  const navigate = useNavigate();
  const [entering, setEntering] = useState(false);
  const [dogs, setDogs] = useState<string[]>([]);
  const { data: groups } = useGroups();
  return (
    <>
      <div className="head">
        <h1>{t('Book several dogs')}</h1>
        <p>{t('One call, one payer, one mail. Each dog has an order and a time of its own; what one cannot have costs no other its time.')}</p>
      </div>
      {entering ? (
        <Sheet title={t('Pups of one litter')}>
          <NewPups onMade={(made) => (setDogs([...dogs, ...made]), setEntering(false))} onCancel={() => setEntering(false)} />
        </Sheet>
      ) : (
        <GroupForm dogs={dogs} onDogs={setDogs} onNewPups={() => setEntering(true)} onBooked={(group) => void navigate({ to: '/litters/$group', params: { group } })} />
      )}
      {groups && groups.rows.length > 0 && (
        <Sheet title={t('Booked together lately')}>
          <ul>
            {groups.rows.slice(0, 10).map((g) => (
              <li key={g.id}>
                <Link to="/litters/$group" params={{ group: g.id }}>
                  {t('{day}, {count, plural, one {# dog} other {# dogs}}', { day: fullDay(g.day), count: g.dogs.length })}
                </Link>{' '}
                <span className="quiet">
                  {g.caller}
                  {g.litter && g.dam && <>, {t('litter of {dam}', { dam: g.dam })}</>}
                </span>
              </li>
            ))}
          </ul>
        </Sheet>
      )}
    </>
  );
}
