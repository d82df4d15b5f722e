import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { dayAt, fullDay, plain, timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';

const classNames = ['', 'I', 'II', 'III', 'IV', 'V'];

/** What was done, in the order in which it was done. */
export function VisitInShort({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const { zone } = screen.practice;
  const when = (at: string) => (dayAt(at, zone) === visit.day ? timeAt(at, zone) : `${fullDay(dayAt(at, zone))}, ${timeAt(at, zone)}`);
  const late = new Set(screen.calm?.late.map((l) => l.at));
  const films = screen.exposures.filter((e) => e.visit === visit.id && !e.disowned);
  const given = visit.drugs.filter((d) => d.event === 'given');
  const steps: [what: string, at: string | undefined][] = [
    [visit.day ? t('Booked for {when}', { when: [fullDay(visit.day), visit.start].filter(Boolean).join(', ') }) : t('No day was booked'), undefined],
    ...(visit.consent ? [[t('Consent to sedation: {answer, select, yes {yes} other {no}}{wishes, select, yes {, with wishes for an emergency} other {}}', { answer: visit.consent.answer, wishes: visit.consent.emergency ? 'yes' : 'no' }), visit.consent.at] as [string, string]] : []),
    ...(visit.admitted ? [[t('Admitted, weighed: {weight} kg', { weight: plain(visit.admitted.weightKg) }), visit.admitted.at] as [string, string]] : []),
    ...(visit.examined ? [[t('Examined by {name}, class {statusClass}', { name: visit.examined.by, statusClass: classNames[visit.examined.statusClass] ?? '' }), visit.examined.at] as [string, string]] : []),
    ...(given[0] ? [[t('Sedated, plan signed by {name}', { name: visit.plans.at(-1)?.by ?? t('nobody') }), given[0].at] as [string, string]] : []),
    ...(films[0] ? [[t('Imaged, {count, plural, one {# film} other {# films}}', { count: films.length }), films[0].at] as [string, string]] : []),
    ...visit.drugs.filter((d) => d.event === 'reversal').map((d): [string, string] => [t('Reversal given'), d.at]),
    ...visit.events.filter((e) => !late.has(e.at)).map((e): [string, string] => [`${e.what} (${e.by})`, e.at]),
    ...(visit.recovery ? [[t('Recovery signed by {name}', { name: visit.recovery.by }), visit.recovery.at] as [string, string]] : []),
    ...(screen.calm?.harm ? [[t('Harm: {what}', { what: screen.calm.harm.what }), screen.calm.harm.at] as [string, string]] : []),
    ...(screen.calm?.death ? [[screen.calm.death.inCare ? t('Died, in our care') : t('Died'), screen.calm.death.at] as [string, string]] : []),
  ];
  const sorted = [steps[0]!, ...steps.slice(1).sort((a, b) => (a[1] ?? '').localeCompare(b[1] ?? ''))];
  return (
    <ol className="hang">
      {sorted.map(([what, at], i) => (
        <li key={`${what}${i}`}>
          {what} {at && <time dateTime={at}>{when(at)}</time>}
        </li>
      ))}
    </ol>
  );
}
