import type { ReactNode } from 'react';
import type { FrozenView } from '#libs/contracts/screens/frozen';
import type { NextAction, OrderScreen } from '#libs/contracts/screens/order';
import { Button } from '../../../design/Button.js';
import { capital, dayAt, fullDay, plural, sentence, timeAt } from '../../../design/format.js';
import { Problems } from '../Problems.js';
import { WaitsFor } from '../WaitsFor.js';
import { AddedLater } from './AddedLater.js';
import { stoppedMail } from './stopped-mail.js';
import { VisitInShort } from './VisitInShort.js';
import './frozen.css';

type Props = { screen: OrderScreen; calm: FrozenView; onAct: (next: NextAction) => void; panel: ReactNode; children: ReactNode };

/** The page of a dog that died or came to harm: quiet, in the order in which a family's questions come. */
export function FrozenRecord({ screen, calm, onAct, panel, children }: Props) {
  const { dog } = screen;
  const name = screen.next.find((n) => n.action === 'nameCaseOwner' && n.yours && n.allowed);
  const visit = screen.visits.at(-1);
  return (
    <div className="kept">
      <div className="kept-page">
        <p className="quiet">{screen.frozen ? 'Record kept as it was' : 'This dog has died'}</p>
        <h1>{dog.callName || dog.name}</h1>
        <p>
          {dog.name}, {dog.breed}, {dog.sex}, born {fullDay(dog.birth.latest)}. Order <span className="num">{screen.accession}</span>.
          <br />
          {whatHappened(screen, calm)}
        </p>
        <Problems screen={screen} />
        {screen.frozen && (
          <section aria-labelledby="speaking">
            <h2 id="speaking">Speaking with the family</h2>
            {calm.caseOwner ? (
              <p>
                <b>{calm.caseOwner.name}</b> speaks with the family, and nobody else does.
              </p>
            ) : (
              <p>Nobody is named yet. One person speaks with the family and answers for this record.</p>
            )}
            {name && (
              <p className="acts">
                <Button onPress={() => onAct(name)}>{calm.caseOwner ? 'Name somebody else' : 'Name who speaks with the family'}</Button>
              </p>
            )}
          </section>
        )}
        <section aria-labelledby="stopped">
          <h2 id="stopped">What the program has stopped</h2>
          <p>{stoppedWords(screen)}</p>
        </section>
        {panel}
        {visit && (
          <section aria-labelledby="visit">
            <h2 id="visit">The visit</h2>
            <VisitInShort screen={screen} visit={visit} />
            <p>
              {capital(plural(calm.readings, 'reading', 'readings'))} and {plural(calm.batches, 'drug batch', 'drug batches')} are kept with it. {calm.legalHold && 'Nothing can be changed or erased, whoever asks.'}
            </p>
          </section>
        )}
        {screen.frozen && <AddedLater screen={screen} />}
        <section className="kept-do">
          <WaitsFor screen={withoutViews(screen)} onAct={onAct} title="Still to do" />
        </section>
        <details className="kept-whole">
          <summary>The whole record</summary>
          {children}
        </details>
      </div>
    </div>
  );
}

/** Nobody takes pictures again of a dog that has died; whether what there is is sent, the vet decides. */
const withoutViews = (screen: OrderScreen): OrderScreen => (screen.calm?.death ? { ...screen, holds: screen.holds.filter((h) => h.code !== 'VIEWS_MISSING') } : screen);

function whatHappened({ dog, practice }: OrderScreen, { death, harm }: FrozenView): string {
  const she = dog.sex === 'female' ? 'She' : 'He';
  const died = death && `${she} died on ${fullDay(death.day)}${death.inCare ? ', in our care' : ''}. Cause, as far as known: ${sentence(death.cause)}`;
  const harmed = harm && `${she} came to harm; written down on ${fullDay(dayAt(harm.at, practice.zone))}, ${timeAt(harm.at, practice.zone)}: ${sentence(harm.what)}`;
  return [harmed, died].filter(Boolean).join(' ');
}

function stoppedWords(screen: OrderScreen): string {
  const stopped = stoppedMail(screen);
  const mails = stopped.length === 0 ? 'No mail to this family was waiting.' : `${plural(stopped.length, 'mail', 'mails')} that ${stopped.length === 1 ? 'was' : 'were'} waiting. None had left.`;
  if (!screen.silent) return `${mails} A vet has lifted the silence since.`;
  return `${mails} No reminder, no question, no request and no bill is sent to this family until a vet lifts the silence. A result of the films, if one comes, waits for a vet too.`;
}
