import { Link, useParams } from '@tanstack/react-router';
import type { OrderScreen, StudyView } from '#libs/contracts/screens/order';
import { useOrder } from '../../api/board.js';
import { Loading } from '../../design/Empty.js';
import { NotShown } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { studyName } from '../order/next-actions.js';
import { AskCentre } from './AskCentre.js';
import { Reading } from './Reading.js';
import { Scan } from './Scan.js';
import './conflict.css';
import { HERE, Told } from '../../words/Told.js';

/** Two readings of the same films, side by side, with what can be told of them. Nobody chooses one here. */
export function ConflictScreen() {
  const { order, study: id } = useParams({ from: '/inside/orders/$order/readings/$study' });
  const { data: screen, error } = useOrder(order);
  if (!screen) return error ? <NotShown title={t('Readings')} error={error} /> : <Loading what={t('the readings')} />;
  const study = screen.studies.find((s) => s.id === id);
  return (
    <>
      <div className="head">
        <h1>{study?.conflict ? t('Two results disagree') : t('Readings agree')}</h1>
        <p>
          <Told text={t('**{dog}**, {breed}, order {link}', { dog: screen.dog.callName || screen.dog.name, breed: screen.dog.breed, link: HERE })} here={<Link to="/orders/$order" params={{ order }} className="num">{screen.accession}</Link>} />
          {study && <>, {studyName(screen, study.id)}</>}
        </p>
      </div>
      {study?.conflict ? <Side screen={screen} study={study} conflict={study.conflict} /> : <p className="said">{t('Nothing disagrees here any more. The order says where it stands.')}</p>}
    </>
  );
}

function Side({ screen, study, conflict }: { screen: OrderScreen; study: StudyView; conflict: NonNullable<StudyView['conflict']> }) {
  const results = study.results.filter((r) => conflict.results.includes(r.id));
  const scanned = results.find((r) => r.scan);
  const hold = screen.holds.find((h) => h.code === 'RESULTS_DISAGREE' && h.on.id === study.id);
  return (
    <>
      <p className="conflict-lead">
        <Told text={t('**Nothing has been released.** No letter, no mail and no certificate goes out until somebody at the reading centre has said which reading stands.')} />
      </p>
      <div className="cols conflict">
        {results.map((r) => (
          <Reading key={r.id} result={r} differs={conflict.differs} zone={screen.practice.zone} />
        ))}
        {scanned?.scan && <Scan order={screen.id} sha={scanned.scan} words={`${scanned.ref}: ${scanned.joints.map((j) => `${j.name} ${j.words}`).join(', ')}`} />}
        <Sheet title={t('What can be told')} className="conflict-told">
          <ul className="lines">
            {conflict.told.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </Sheet>
        <Sheet title={t('What it waits for')} className="conflict-told">
          <p>
            <Told text={t('**Which reading stands?** {centre} answers in writing.', { centre: study.centre.name })} />{' '}{hold && t('Waited for: {people}.', { people: hold.who.join(', ') })}{' '}<Told text={t('The vet then writes down who said so, under {link}.', { link: HERE })} here={<Link to="/orders/$order" params={{ order: screen.id }}>{t('Settle conflict on the order')}</Link>} />
          </p>
          <AskCentre screen={screen} study={study} asked={conflict.asked} />
          <p className="label">{t('There is no button to choose one. Whoever is asked, both readings and the scan stay with the order.')}</p>
        </Sheet>
      </div>
    </>
  );
}
