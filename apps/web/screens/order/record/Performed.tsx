import type { ReactNode } from 'react';
import type { OrderScreen, PerformedStep } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { list, timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';

/** The machine's own account of its work, beside what people wrote down. */
export function Performed({ screen }: { screen: OrderScreen }) {
  if (screen.performed.length === 0) return null;
  return (
    <Sheet title={t('What the X-ray machine says it did')}>
      <p className="small">{t('Its own words, on its own clock. They change nothing that a person has written down.')}</p>
      {screen.performed.map((step) => (
        <Step key={step.id} step={step} zone={screen.practice.zone} />
      ))}
    </Sheet>
  );
}

function Step({ step, zone }: { step: PerformedStep; zone: string }) {
  const { images, here, exposures } = step;
  const doses = dosesOf(step);
  return (
    <section className="stack" aria-label={`${step.from}, ${timeAt(step.at, zone)}`}>
      <h3>{stateOf(step)}</h3>
      <dl className="facts">
        {step.what && <Pair name={t('Protocol')}>{step.what}</Pair>}
        {step.started && <Pair name={t('When')}>{step.ended ? t('{start} to {end}', { start: clock(step.started), end: clock(step.ended) }) : t('from {start}', { start: clock(step.started) })}</Pair>}
        {exposures !== null && <Pair name={t('Exposures')}>{exposures}</Pair>}
        {images > 0 && <Pair name={t('Images')}>{here === images ? t('{images}, all of them here', { images }) : t('{images}, of which {here} came', { images, here })}</Pair>}
        {step.films.length > 0 && <Pair name={t('Films')}>{list(step.films)}</Pair>}
        {doses && <Pair name={t('Dose')}>{doses}</Pair>}
        {step.each.length > 0 && <Pair name={t('Each exposure')}>{step.each.map(settings).join('; ')}</Pair>}
      </dl>
      {step.state !== 'inProgress' && exposures !== null && exposures > here && (
        <p>{t('It counts {exposures, plural, one {# exposure} other {# exposures}}, and {here, plural, one {# image} other {# images}} of it came. Look at the machine whether something was not sent.', { exposures, here })}</p>
      )}
      {step.otherDog && <p className="warn">{t('It names another dog: {animal}.', { animal: step.patientId ?? '' })}</p>}
    </section>
  );
}

function stateOf({ from, state, reason }: PerformedStep): string {
  if (state === 'inProgress') return t('{machine}: at work', { machine: from });
  if (state === 'completed') return t('{machine}: done', { machine: from });
  return reason ? t('{machine}: broken off, {reason}', { machine: from, reason }) : t('{machine}: broken off', { machine: from });
}

const Pair = ({ name, children }: { name: string; children: ReactNode }) => (
  <>
    <dt>{name}</dt>
    <dd className="num">{children}</dd>
  </>
);

const clock = (moment: string) => moment.slice(11);
const value = (number: number | undefined | null, unit: string) => (number === undefined || number === null ? [] : [`${Number(number.toPrecision(4))}\u00a0${unit}`]);
const settings = ({ kv, mas }: PerformedStep['each'][number]) => [...value(kv, 'kV'), ...value(mas, 'mAs')].join(', ');
const dosesOf = (step: PerformedStep) => [...value(step.areaDose, t('dGy·cm² (dose area product)')), ...value(step.entranceDose, t('mGy at the skin')), ...value(step.distanceCm, t('cm to the detector'))].join(', ');
