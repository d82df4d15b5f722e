import { useState } from 'react';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { signedOut } from '../../api/failure.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Advice } from './Advice.js';
import { Consents } from './Consents.js';
import { Decided } from './Decided.js';
import { Estimate } from './Estimate.js';
import { House } from './House.js';
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
  const { data: page, error } = useOwnerPage();
  if (page) return <Page page={page} />;
  return (
    <div className="own">
      <main id="main">
        {error ? <ErrorBar error={error}>{signedOut(error) && <p>Press the link in the newest mail from the practice, or ask them on the phone to send a new one.</p>}</ErrorBar> : <Loading what="your dog’s page" />}
      </main>
    </div>
  );
}

function Page({ page }: { page: OwnerPage }) {
  const [again, setAgain] = useState<string[]>([]);
  const [signed, setSigned] = useState(false);
  const { dog, practice } = page;
  const tel = `tel:${practice.phone.replace(/\s/g, '')}`;
  const first = firstAsked(page);
  return (
    <div className="own">
      <a className="skip" href="#main">
        Go to the page
      </a>
      <header>
        <House name={practice.name} />
        <a href={tel}>{practice.phone}</a>
      </header>
      <main id="main">
        <h1>{dog.name}</h1>
        <p className="lead">{page.status}</p>
        <Roads page={page} />
        {page.toDo.length > 0 && (
          <section aria-labelledby="todo">
            <h2 id="todo">What we ask of you</h2>
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
            <h2 id="next">What happens next</h2>
            {page.waiting.map((words) => (
              <p key={words}>{words}</p>
            ))}
          </section>
        )}
        <Decided page={page} signed={signed} onAgain={(key) => (setAgain([...again, key]), document.getElementById('consent')?.scrollIntoView())} />
        {page.estimate?.accepted && <Estimate page={page} first={false} />}
        <LetterTime page={page} />
        <section aria-labelledby="talk">
          <h2 id="talk">Talk to us</h2>
          <p>
            {practice.name}, <a href={tel}>{practice.phone}</a>. Are you worried about {dog.name}? Phone us; if we are closed, phone the vet on call. Do not wait for a mail.
          </p>
          <p className="quiet small">
            {dog.breed}, {dog.sex}{dog.transponder && `, transponder ${dog.transponder}`}. Order {page.accession}.
          </p>
        </section>
      </main>
    </div>
  );
}

/** One filled button a page: on the first thing that is still open. */
function firstAsked(page: OwnerPage): 'questions' | 'estimate' | 'consents' | null {
  if (questionsOpen(page) && page.questions.some((q) => q.answer === null)) return 'questions';
  if (page.visit && page.estimate && !page.estimate.accepted) return 'estimate';
  return mayAsk(page) && purposesOf(page).some((p) => !p.answered) ? 'consents' : null;
}
