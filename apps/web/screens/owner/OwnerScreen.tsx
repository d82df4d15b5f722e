import { useState } from 'react';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { signedOut } from '../../api/failure.js';
import { useMeQuery } from '../../api/session.js';
import { useLive } from '../../api/live.js';
import { ErrorBar } from '../../design/Notice.js';
import { Advice } from './Advice.js';
import { Consents } from './Consents.js';
import { Decided } from './Decided.js';
import { Estimate } from './Estimate.js';
import { Speak, useWords, type ScreenWords } from '../../words/Speak.js';
import { browserLanguage } from '../../words/t.js';
import { HERE, Told } from '../../words/Told.js';
import { House } from './House.js';
import { LanguageChoice } from './LanguageChoice.js';
import { LetterTime } from './LetterTime.js';
import { Offer } from './Offer.js';
import { Papers } from './Papers.js';
import { Questions, questionsOpen } from './Questions.js';
import { Results } from './Results.js';
import { Roads } from './Roads.js';
import { Transfer } from './Transfer.js';
import { mayAsk, purposesOf } from './consent-purposes.js';
import { useOwnerPage } from './queries.js';
import './owner.css';

export function OwnerScreen() {
  // A page that is loaded anew asks who reads it, and learns what it has to send along with every answer.
  useMeQuery();
  const { data: page, error } = useOwnerPage();
  useLive(page !== undefined);
  return <Speak language={page?.language ?? browserLanguage()}>{page ? <Page page={page} /> : <NoPage error={error} />}</Speak>;
}

function NoPage({ error }: { error: unknown }) {
  const t = useWords();
  return (
    <div className="own">
      <main id="main">
        {error ? (
          <ErrorBar error={error}>{signedOut(error) && <p>{t('Press the link in the newest mail from the practice, or ask them on the phone to send a new one.')}</p>}</ErrorBar>
        ) : (
          <p className="loading quiet" role="status">{t('Fetching your dog’s page …')}</p>
        )}
      </main>
    </div>
  );
}

function Page({ page }: { page: OwnerPage }) {
  const t = useWords();
  const [again, setAgain] = useState<string[]>([]);
  const [signed, setSigned] = useState(false);
  const { dog, practice } = page;
  const tel = `tel:${practice.phone.replace(/\s/g, '')}`;
  const first = firstAsked(page, t);
  return (
    <div className="own">
      <a className="skip" href="#main">
        {t('Go to the page')}
      </a>
      <header>
        <House name={practice.name} />
        <a href={tel}>{practice.phone}</a>
      </header>
      <LanguageChoice page={page} />
      <main id="main">
        <h1 dir="auto">{dog.name}</h1>
        <p className="lead">{page.status}</p>
        <Roads page={page} />
        {page.toDo.length > 0 && (
          <section aria-labelledby="todo">
            <h2 id="todo">{t('What we ask of you')}</h2>
            <ul className="todo">
              {page.toDo.map((asked) => (
                <li key={asked.words}>{asked.words}</li>
              ))}
            </ul>
          </section>
        )}
        <Transfer page={page} />
        <Offer page={page} />
        <Results page={page} />
        <Papers page={page} />
        <Advice page={page} />
        <Questions page={page} first={first === 'questions'} />
        {!page.estimate?.accepted && <Estimate page={page} first={first === 'estimate'} />}
        <Consents page={page} first={first === 'consents'} again={again} onDone={() => (setAgain([]), setSigned(true))} />
        {page.waiting.length > 0 && (
          <section aria-labelledby="next">
            <h2 id="next">{t('What happens next')}</h2>
            {page.waiting.map((words) => (
              <p key={words}>{words}</p>
            ))}
          </section>
        )}
        <Decided page={page} signed={signed} onAgain={(key) => (setAgain([...again, key]), document.getElementById('consent')?.scrollIntoView())} />
        {page.estimate?.accepted && <Estimate page={page} first={false} />}
        <LetterTime page={page} />
        <section aria-labelledby="talk">
          <h2 id="talk">{t('Talk to us')}</h2>
          <p>
            <Told text={t('{practice}, {phone}. Are you worried about {dog}? Phone us; if we are closed, phone the vet on call. Do not wait for a mail.', { practice: practice.name, phone: HERE, dog: dog.name })} here={<a href={tel}>{practice.phone}</a>} />
          </p>
          <p className="quiet small">
            {[dog.breed, t(dog.sex), ...(dog.transponder === '' ? [] : [dog.transponder === 'none' ? t('no transponder') : t('transponder {number}', { number: dog.transponder })])].join(', ')}. {t('Order {order}.', { order: page.accession })}
          </p>
        </section>
      </main>
    </div>
  );
}

/** One filled button a page: on the first thing that is still open. */
function firstAsked(page: OwnerPage, t: ScreenWords): 'questions' | 'estimate' | 'consents' | null {
  if (questionsOpen(page) && page.questions.some((q) => q.answer === null)) return 'questions';
  if (page.visit && page.estimate && !page.estimate.accepted) return 'estimate';
  return mayAsk(page) && purposesOf(page, t).some((p) => !p.answered) ? 'consents' : null;
}
