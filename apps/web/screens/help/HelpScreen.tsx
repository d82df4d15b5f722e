import { useStudies } from '../../design/explained/use-studies.js';
import { Sheet } from '../../design/Sheet.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { useMe } from '../../shell/me.js';
import { TourSteps } from '../../shell/tour/TourSteps.js';
import { t } from '../../words/t.js';
import { helpSteps, type HelpStep } from './steps.js';
import { StudyHelp } from './StudyHelp.js';
import './help.css';

/** A part for each step of the road and for each study. */
export function HelpScreen() {
  const me = useMe();
  const { data: studies, error } = useStudies();
  return (
    <>
      <div className="head">
        <h1>{t('Help')}</h1>
      </div>
      <nav className="more" aria-label={t('On this page')}>
        {helpSteps.map((s) => <a key={s.id} href={`#${s.id}`}>{t(s.title)}</a>)}
        <a href="#studies">{t('Studies and numbers')}</a>
      </nav>
      <div className="help">
        <Sheet title={t('The short tour for you')}>
          <TourSteps me={me} />
        </Sheet>
        {helpSteps.map((step) => <Step key={step.id} step={step} />)}
        <div id="studies">
          <ErrorBar error={error} />
          {!studies && !error && <Loading what={t('the studies')} />}
          {studies?.map((study) => <StudyHelp key={study.code} study={study} />)}
        </div>
      </div>
    </>
  );
}

const Step = ({ step }: { step: HelpStep }) => (
  <div id={step.id}>
    <Sheet title={t(step.title)} beside={t(step.who)}>
      <ul className="lines">{step.does.map((d) => <li key={d}>{t(d)}</li>)}</ul>
      <p><b>{t('What holds it.')}</b> {t(step.holds)}</p>
      <p><b>{t('When it goes another way.')}</b> {t(step.goesWrong)}</p>
      {step.caution && <p className="caution">{t(step.caution)}</p>}
    </Sheet>
  </div>
);
