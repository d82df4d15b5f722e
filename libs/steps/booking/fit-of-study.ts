import type { BookingOptions } from '#libs/contracts/booking';
import { addDays } from '#libs/pathway/days';
import { accreditationOn, takesFilms } from '#libs/register/practice/accredited';
import { equipmentWords } from '#libs/register/practice/what-is-missing';
import { oldEnough, youngestFor } from '#libs/science/age';
import type { Protocol, Youngest } from '#libs/science/protocols/types';
import { listed } from '#libs/words/days';
import { t } from '#libs/words/spoken';
import { spokenDay } from '../record/day-words.js';
import type { BookingSource } from './booking-source.js';

type Problem = BookingOptions['studies'][number]['problems'][number];

export interface Fit { problems: Problem[]; says: string }

/** Whether a dog can have a study here on a day; why not, and from which day on where time cures it. */
export function fitOfStudy(source: BookingSource, protocol: Protocol, day: string): Fit {
  const operators = operatorsOn(source, protocol.code, day);
  const tooYoung = ageProblem(source, protocol, day);
  const problems = [...lifeProblem(source), ...tooYoung, ...placeProblems(source, protocol, day, operators.length), ...repeatProblem(source, protocol, day)];
  const needed = youngestWords(youngestFor(protocol, source.dog.breed, source.older?.[protocol.code]));
  const views = protocol.views.filter((v) => v.required).length;
  const says = [tooYoung.length === 0 ? t('Old enough: {needed} needed.', { needed }) : t('{needed} needed.', { needed }), t('{views, plural, =0 {No views} =1 {One view} =2 {Two views} =3 {Three views} =4 {Four views} =5 {Five views} =6 {Six views} one {# view} other {# views}}.', { views }), protocol.needsAccreditation ? operatorWords(operators) : ''];
  return { problems, says: says.filter(Boolean).join(' ') };
}

const youngestWords = (age: Youngest): string => ('days' in age ? t('{days} days', { days: age.days }) : t('{months} months', { months: age.months }));

function lifeProblem({ dog }: BookingSource): Problem[] {
  return dog.died ? [{ code: 'DOG_DIED', words: t('The dog died on {died}.', { died: spokenDay(dog.died) }) }] : [];
}

function ageProblem({ dog, older }: BookingSource, protocol: Protocol, day: string): Problem[] {
  // Before the latest day of birth a dog may have no age at all, and is too young either way.
  const on = day < dog.birth.latest ? dog.birth.latest : day;
  const answer = oldEnough(protocol, dog.breed, dog.birth, on, older?.[protocol.code]);
  if (answer.ok) return [];
  const { earliestDate, youngest, daysShort } = answer.tooYoung;
  return [{ code: 'TOO_YOUNG', words: t('Too young on {day}, by {daysShort, plural, one {# day} other {# days}}: {youngest} needed. Old enough from {earliestDate}.', { day: spokenDay(day), daysShort, youngest: youngestWords(youngest), earliestDate: spokenDay(earliestDate) }), earliestDate }];
}

function placeProblems({ equipment, centres }: BookingSource, protocol: Protocol, day: string, operators: number): Problem[] {
  const problems: Problem[] = [];
  if (!centres.some((c) => c.protocols.includes(protocol.code))) problems.push({ code: 'NO_CENTRE', words: t('No grading centre of the scheme reads this study.') });
  if (protocol.needsAccreditation && operators === 0) problems.push({ code: 'OPERATOR', words: t('Nobody here is accredited for it on {day}. Refer the dog to a practice that is, or choose another day.', { day: spokenDay(day) }) });
  for (const kind of protocol.equipment) {
    const latest = equipment.find((e) => e.kind === kind);
    const device = t.known(equipmentWords[kind] ?? kind);
    if (!latest) problems.push({ code: 'EQUIPMENT', words: t('There is no {device} here. Refer the dog to a practice that has one.', { device }) });
    else if (latest.checkedUntil < day) problems.push({ code: 'EQUIPMENT', words: t('The check of the {device} held until {day}. The practice manager has it checked, or another day is chosen.', { device, day: spokenDay(latest.checkedUntil) }) });
  }
  return problems;
}

function repeatProblem({ lastResults }: BookingSource, protocol: Protocol, day: string): Problem[] {
  const last = lastResults[protocol.code];
  const earliestDate = last && addDays(last, protocol.repeatAfterDays);
  if (!last || !earliestDate || earliestDate <= day) return [];
  return [{ code: 'REPEAT_TOO_SOON', words: t('A result of this study was accepted on {last}. It is repeated after {repeatAfterDays} days, from {earliestDate}.', { last: spokenDay(last), repeatAfterDays: protocol.repeatAfterDays, earliestDate: spokenDay(earliestDate) }), earliestDate }];
}

interface Operator { name: string; until: string }

function operatorsOn({ staff, accreditations }: BookingSource, protocol: string, day: string): Operator[] {
  return staff.filter(takesFilms).flatMap(({ id, name }) => {
    const held = accreditationOn(accreditations, id, protocol, day);
    return held ? [{ name, until: held.until }] : [];
  });
}

function operatorWords(operators: Operator[]): string {
  const [first] = operators;
  if (!first) return '';
  if (operators.length === 1) return t('Operator {first} may take them until {until}.', { first: first.name, until: spokenDay(first.until) });
  return t('Operators {names} may take them.', { names: listed(t.language, operators.map((o) => o.name)) });
}
