import type { ReactNode } from 'react';
import type { FrozenView } from '#libs/contracts/screens/frozen';
import type { NextAction, OrderScreen } from '#libs/contracts/screens/order';
import { Button } from '../../../design/Button.js';
import { dayAt, fullDay, sentence, timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { Problems } from '../Problems.js';
import { WaitsFor } from '../WaitsFor.js';
import { AddedLater } from './AddedLater.js';
import { stoppedMail } from './stopped-mail.js';
import { VisitInShort } from './VisitInShort.js';
import './frozen.css';
import { Told } from '../../../words/Told.js';

type Props = { screen: OrderScreen; calm: FrozenView; onAct: (next: NextAction) => void; panel: ReactNode; children: ReactNode };

/** The page of a dog that died or came to harm: quiet, in the order in which a family's questions come. */
export function FrozenRecord({ screen, calm, onAct, panel, children }: Props) {
  const { dog } = screen;
  const name = screen.next.find((n) => n.action === 'nameCaseOwner' && n.yours && n.allowed);
  const visit = screen.visits.at(-1);
  return (
    <div className="kept">
      <div className="kept-page">
        <p className="quiet">{screen.frozen ? t('Record kept as it was') : t('This dog has died')}</p>
        <h1>{dog.callName || dog.name}</h1>
        <p>
          {t('{dog}, {breed}, {sex}, born {day}.', { dog: dog.name, breed: dog.breed, sex: t(dog.sex), day: fullDay(dog.birth.latest) })} {t('Order')} <span className="num">{screen.accession}</span>.
          <br />
          {whatHappened(screen, calm)}
        </p>
        <Problems screen={screen} />
        {screen.frozen && (
          <section aria-labelledby="speaking">
            <h2 id="speaking">{t('Speaking with the family')}</h2>
            {calm.caseOwner ? (
              <p>
                <Told text={t('**{name}** speaks with the family, and nobody else does.', { name: calm.caseOwner.name })} />
              </p>
            ) : (
              <p>{t('Nobody is named yet. One person speaks with the family and answers for this record.')}</p>
            )}
            {name && (
              <p className="acts">
                <Button onPress={() => onAct(name)}>{calm.caseOwner ? t('Name somebody else') : t('Name who speaks with the family')}</Button>
              </p>
            )}
          </section>
        )}
        <section aria-labelledby="stopped">
          <h2 id="stopped">{t('What the program has stopped')}</h2>
          <p>{stoppedWords(screen)}</p>
        </section>
        {panel}
        {visit && (
          <section aria-labelledby="visit">
            <h2 id="visit">{t('The visit')}</h2>
            <VisitInShort screen={screen} visit={visit} />
            <p>
              {t('{readings, plural, one {# reading} other {# readings}} and {batches, plural, one {# drug batch} other {# drug batches}} are kept with it.', { readings: calm.readings, batches: calm.batches })}{' '}{calm.legalHold && t('Nothing can be changed or erased, whoever asks.')}
            </p>
          </section>
        )}
        {screen.frozen && <AddedLater screen={screen} />}
        <section className="kept-do">
          <WaitsFor screen={withoutViews(screen)} onAct={onAct} title={t('Still to do')} />
        </section>
        <details className="kept-whole">
          <summary>{t('The whole record')}</summary>
          {children}
        </details>
      </div>
    </div>
  );
}

/** Nobody takes pictures again of a dog that has died; whether what there is is sent, the vet decides. */
const withoutViews = (screen: OrderScreen): OrderScreen => (screen.calm?.death ? { ...screen, holds: screen.holds.filter((h) => h.code !== 'VIEWS_MISSING') } : screen);

function whatHappened({ dog, practice }: OrderScreen, { death, harm }: FrozenView): string {
  const { sex } = dog;
  const died = death && t('{sex, select, female {She} other {He}} died on {day}{inCare, select, yes {, in our care} other {}}. Cause, as far as known: {cause}', { sex, day: fullDay(death.day), inCare: death.inCare ? 'yes' : 'no', cause: sentence(death.cause) });
  const harmed = harm && t('{sex, select, female {She} other {He}} came to harm; written down on {day}, {time}: {what}', { sex, day: fullDay(dayAt(harm.at, practice.zone)), time: timeAt(harm.at, practice.zone), what: sentence(harm.what) });
  return [harmed, died].filter(Boolean).join(' ');
}

function stoppedWords(screen: OrderScreen): string {
  const count = stoppedMail(screen).length;
  const mails = count === 0 ? t('No mail to this family was waiting.') : t('{count, plural, one {# mail that was waiting.} other {# mails that were waiting.}} None had left.', { count });
  const since = screen.silent
    ? t('No reminder, no question, no request and no bill is sent to this family until a vet lifts the silence. A result of the films, if one comes, waits for a vet too.')
    : t('A vet has lifted the silence since.');
  return `${mails} ${since}`;
}
