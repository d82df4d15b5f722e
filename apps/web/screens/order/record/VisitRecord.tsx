import type { ReactNode } from 'react';
import type { OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { capital, longDay, momentAt, money, plain, timeAt, transponder } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { optionWords } from '../forms/option-words.js';
import { Plans } from './Plans.js';
import { Readings } from './Readings.js';
import { DrugRecord } from './DrugRecord.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { HERE, Told } from '../../../words/Told.js';

const classNames = ['', 'I', 'II', 'III', 'IV', 'V'];

/** Everything written down of one visit, in the order in which it happens. */
export function VisitRecord({ screen, visit }: { screen: OrderScreen; visit: VisitView }) {
  const zone = screen.practice.zone;
  const { estimate, consent, admitted, examined, recovery, sheet } = visit;
  const facts: [string, ReactNode][] = [
    [t('When and where'), visit.day ? [`${longDay(visit.day)}${visit.start ? `, ${visit.start}` : ''}`, visit.where, visit.room].filter(Boolean).join(', ') : t('No day yet')],
    [t('People'), [visit.operator && t('operator {name}', { name: visit.operator }), visit.nurse && t('nurse {name}', { name: visit.nurse }), visit.vet && t('vet {name}', { name: visit.vet })].filter(Boolean).join(', ')],
    [t('Estimate'), estimate && `${money(estimate.totalMinor, estimate.currency)}, ${estimate.accepted ?? t('not accepted yet')}`],
    [t('Answers'), visit.answers.length > 0 && <Answers answers={visit.answers} />],
    [t('Consent to sedation'), consent && `${optionWords(consent.answer)}, ${consent.signer}, ${momentAt(consent.at, zone)}`],
    [t('In an emergency'), consent?.emergency && emergencyWords(consent.emergency, estimate?.currency ?? '')],
    [t('Admitted'), admitted && t('{time}: {weight}\u00a0kg, body condition {condition} of 9, {hours}\u00a0h without food', { time: timeAt(admitted.at, zone), weight: plain(admitted.weightKg), condition: admitted.bodyCondition, hours: plain(admitted.fastedHours) })],
    [t('Scans'), visit.scans.length > 0 && <Lines lines={visit.scans.map((s) => t('{time}, {place, select, table {table} other {admission}}: {numbers}, {matches, select, yes {matches the order} other {does not match the order}}, {name}', { time: timeAt(s.at, zone), place: s.place, numbers: s.numbers.map(transponder).join(', ') || t('nothing read'), matches: s.matches ? 'yes' : 'no', name: s.by }))} />],
    [t('Examination'), examined && [t('Class {statusClass}', { statusClass: classNames[examined.statusClass] ?? examined.statusClass }), examined.reason, examined.findings?.replace(/\.$/, ''), `${examined.by}, ${timeAt(examined.at, zone)}`].filter(Boolean).join('. ')],
    [t('Events'), visit.events.length > 0 && <Lines lines={visit.events.map((e) => `${timeAt(e.at, zone)}: ${e.what} ${e.by}`)} />],
    [t('Recovery'), recovery && `${recovery.signs.map(optionWords).join(', ')}. ${recovery.by}, ${timeAt(recovery.at, zone)}`],
    [t('Going-home sheet'), sheet && <SheetGiven order={screen.id} sheet={sheet} zone={zone} />],
  ];
  return (
    <Sheet title={visit.day ? t('Visit, {day}', { day: longDay(visit.day) }) : t('Visit')} beside={visit.stepLabel}>
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

const answerWords: Record<string, PageSentence> = { yes: 'Yes', no: 'No', unknown: 'Don’t know' };
const Answers = ({ answers }: { answers: VisitView['answers'] }) => <Lines lines={answers.map((a) => `${t.known(a.words)} ${answerWords[a.answer] ? t(answerWords[a.answer]!) : a.answer}${a.note ? `: ${a.note}` : ''}`)} />;

function emergencyWords(e: Record<string, unknown>, currency: string): string {
  const collectors = Array.isArray(e.collectors) ? e.collectors.join(', ') : '';
  return capital([e.resuscitate === 'yes' ? t('try to revive') : e.resuscitate === 'no' ? t('do not try to revive') : '', typeof e.limitMinor === 'number' && t('up to {limit} without asking', { limit: money(e.limitMinor, currency) }), e.number && t('call {number}', { number: String(e.number) }), collectors && t('may collect: {collectors}', { collectors })].filter(Boolean).join('; '));
}

const SheetGiven = ({ order, sheet, zone }: { order: string; sheet: NonNullable<VisitView['sheet']>; zone: string }) => (
  <>
    <Told
      text={t('{link} explained to {person} by {name}, {time}', { link: HERE, person: sheet.to, name: sheet.by, time: timeAt(sheet.at, zone) })}
      here={<a href={`/api/orders/${order}/documents/${sheet.document}`} target="_blank" rel="noreferrer">{t('Sheet')}</a>}
    />
  </>
);
