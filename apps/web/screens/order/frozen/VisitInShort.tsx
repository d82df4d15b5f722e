import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { dayAt, fullDay, plural, timeAt } from '../../../design/format.js';

const classNames = ['', 'I', 'II', 'III', 'IV', 'V'];

/** What was done, in the order in which it was done. */
export function VisitInShort({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const { zone } = screen.practice;
  const when = (at: string) => (dayAt(at, zone) === visit.day ? timeAt(at, zone) : `${fullDay(dayAt(at, zone))}, ${timeAt(at, zone)}`);
  const late = new Set(screen.calm?.late.map((l) => l.at));
  const films = screen.exposures.filter((e) => e.visit === visit.id && !e.disowned);
  const given = visit.drugs.filter((d) => d.event === 'given');
  const steps: [what: string, at: string | undefined][] = [
    [visit.day ? `Booked for ${fullDay(visit.day)}${visit.start ? `, ${visit.start}` : ''}` : 'No day was booked', undefined],
    ...(visit.consent ? [[`Consent to sedation: ${visit.consent.answer}${visit.consent.emergency ? ', with wishes for an emergency' : ''}`, visit.consent.at] as [string, string]] : []),
    ...(visit.admitted ? [[`Admitted, weighed: ${visit.admitted.weightKg} kg`, visit.admitted.at] as [string, string]] : []),
    ...(visit.examined ? [[`Examined by ${visit.examined.by}, class ${classNames[visit.examined.statusClass] ?? ''}`, visit.examined.at] as [string, string]] : []),
    ...(given[0] ? [[`Sedated, plan signed by ${visit.plans.at(-1)?.by ?? 'nobody'}`, given[0].at] as [string, string]] : []),
    ...(films[0] ? [[`Imaged, ${plural(films.length, 'film', 'films')}`, films[0].at] as [string, string]] : []),
    ...visit.drugs.filter((d) => d.event === 'reversal').map((d): [string, string] => ['Reversal given', d.at]),
    ...visit.events.filter((e) => !late.has(e.at)).map((e): [string, string] => [`${e.what} (${e.by})`, e.at]),
    ...(visit.recovery ? [[`Recovery signed by ${visit.recovery.by}`, visit.recovery.at] as [string, string]] : []),
    ...(screen.calm?.harm ? [[`Harm: ${screen.calm.harm.what}`, screen.calm.harm.at] as [string, string]] : []),
    ...(screen.calm?.death ? [[`Died${screen.calm.death.inCare ? ', in our care' : ''}`, screen.calm.death.at] as [string, string]] : []),
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
