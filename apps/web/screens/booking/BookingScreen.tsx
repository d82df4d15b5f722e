import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { Fragment, useState } from 'react';
import { useDog } from '../../api/register.js';
import { lettersOf } from '../../design/answer-letters.js';
import { buttonClass } from '../../design/Button.js';
import { yesNoUnknown } from '../../design/RadioChoice.js';
import { Sheet } from '../../design/Sheet.js';
import { NewDogForm } from '../../dog-entry/NewDogForm.js';
import { t } from '../../words/t.js';
import { BookingForm } from './BookingForm.js';
import './booking.css';

export function BookingScreen() {
  const { dog: id } = useSearch({ from: '/inside/book' });
  const navigate = useNavigate();
  const { data: dog } = useDog(id);
  const [adding, setAdding] = useState(false);
  const choose = (chosen: string | undefined) => {
    setAdding(false);
    void navigate({ to: '/book', search: chosen ? { dog: chosen } : {}, replace: true });
  };
  return (
    <>
      <div className="head">
        <h1>{t('Book a visit')}</h1>
        <p>
          <kbd>Tab</kbd> {t('next')} <kbd>{t('Shift Tab')}</kbd> {t('back')} <AnswerKeys />{t('answer')} <kbd>{t('Ctrl Enter')}</kbd> {t('book')}
        </p>
        <div className="acts">
          <Link to="/book/litter" className={buttonClass()}>
            {t('Several dogs, or a litter')}
          </Link>
        </div>
      </div>
      {adding ? (
        <Sheet title={t('New dog')}>
          <NewDogForm onMade={(made) => choose(made.id)} onCancel={() => setAdding(false)} />
        </Sheet>
      ) : (
        <BookingForm key={id} dog={id ? dog : undefined} onDog={choose} onNewDog={() => setAdding(true)} onBooked={(order) => void navigate({ to: '/orders/$order', params: { order } })} />
      )}
    </>
  );
}

/** Y N D, or what the answers begin with in the reader's language. */
const AnswerKeys = () => lettersOf(yesNoUnknown.map(({ name }) => t(name))).map((letter) => <Fragment key={letter}><kbd>{letter}</kbd> </Fragment>);
