import type { ReactNode } from 'react';
import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { capital, longDay, momentAt, money, timeAt, transponder } from '../../../design/format.js';
import { optionWords } from '../forms/option-words.js';
import { Plans } from './Plans.js';
import { Readings } from './Readings.js';
import { DrugRecord } from './DrugRecord.js';

const classNames = ['', 'I', 'II', 'III', 'IV', 'V'];

/** Everything written down of one visit, in the order in which it happens. */
export function VisitRecord({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const zone = screen.practice.zone;
  const { estimate, consent, admitted, examined, recovery, sheet } = visit;
  const facts: [string, ReactNode][] = [
    ['When and where', visit.day ? [`${longDay(visit.day)}${visit.start ? `, ${visit.start}` : ''}`, visit.where, visit.room].filter(Boolean).join(', ') : 'No day yet'],
    ['People', [visit.operator && `operator ${visit.operator}`, visit.nurse && `nurse ${visit.nurse}`, visit.vet && `vet ${visit.vet}`].filter(Boolean).join(', ')],
    ['Estimate', estimate && `${money(estimate.totalMinor, estimate.currency)}, ${estimate.accepted ?? 'not accepted yet'}`],
    ['Answers', visit.answers.length > 0 && <Answers answers={visit.answers} />],
    ['Consent to sedation', consent && `${optionWords(consent.answer)}, ${consent.signer}, ${momentAt(consent.at, zone)}`],
    ['In an emergency', consent?.emergency && emergencyWords(consent.emergency, estimate?.currency ?? '')],
    ['Admitted', admitted && `${timeAt(admitted.at, zone)}: ${admitted.weightKg}\u00a0kg, body condition ${admitted.bodyCondition} of 9, ${admitted.fastedHours}\u00a0h without food`],
    ['Scans', visit.scans.length > 0 && <Lines lines={visit.scans.map((s) => `${timeAt(s.at, zone)}, ${s.place}: ${s.numbers.map(transponder).join(', ') || 'nothing read'}, ${s.matches ? 'matches the order' : 'does not match the order'}, ${s.by}`)} />],
    ['Examination', examined && [`Class ${classNames[examined.statusClass] ?? examined.statusClass}`, examined.reason, examined.findings?.replace(/\.$/, ''), `${examined.by}, ${timeAt(examined.at, zone)}`].filter(Boolean).join('. ')],
    ['Events', visit.events.length > 0 && <Lines lines={visit.events.map((e) => `${timeAt(e.at, zone)}: ${e.what} ${e.by}`)} />],
    ['Recovery', recovery && `${recovery.signs.map(optionWords).join(', ')}. ${recovery.by}, ${timeAt(recovery.at, zone)}`],
    ['Going-home sheet', sheet && <SheetGiven order={screen.id} sheet={sheet} zone={zone} />],
  ];
  return (
    <Sheet title={`Visit${visit.day ? `, ${longDay(visit.day)}` : ''}`} beside={visit.stepLabel}>
      <div className="record">
        <dl className="facts">
          {facts.map(([name, value]) =>
            value ? (
              <div key={name} style={{ display: 'contents' }}>
                <dt>{name}</dt>
                <dd>{value}</dd>
              </div>
            ) : null,
          )}
        </dl>
        <Plans visit={visit} zone={zone} />
        <Readings visit={visit} zone={zone} />
        <DrugRecord visit={visit} zone={zone} />
      </div>
    </Sheet>
  );
}

const Lines = ({ lines }: { lines: string[] }) => (
  <ul className="plain">
    {lines.map((l, i) => (
      <li key={i}>{l}</li>
    ))}
  </ul>
);

const answerWords: Record<string, string> = { yes: 'Yes', no: 'No', unknown: 'Don’t know' };
const Answers = ({ answers }: { answers: VisitView['answers'] }) => <Lines lines={answers.map((a) => `${a.words} ${answerWords[a.answer] ?? a.answer}${a.note ? `: ${a.note}` : ''}`)} />;

function emergencyWords(e: Record<string, unknown>, currency: string): string {
  const collectors = Array.isArray(e.collectors) ? e.collectors.join(', ') : '';
  return capital([e.resuscitate === 'yes' ? 'try to revive' : e.resuscitate === 'no' ? 'do not try to revive' : '', typeof e.limitMinor === 'number' && `up to ${money(e.limitMinor, currency)} without asking`, e.number && `call ${String(e.number)}`, collectors && `may collect: ${collectors}`].filter(Boolean).join('; '));
}

const SheetGiven = ({ order, sheet, zone }: { order: string; sheet: NonNullable<VisitView['sheet']>; zone: string }) => (
  <>
    <a href={`/api/orders/${order}/documents/${sheet.document}`} target="_blank" rel="noreferrer">
      Sheet
    </a>{' '}
    explained to {sheet.to} by {sheet.by}, {timeAt(sheet.at, zone)}
  </>
);
