import type { BookingOptions } from '#libs/contracts/booking';
import { addDays } from '#libs/pathway/days';
import { equipmentWords } from '#libs/register/practice/what-is-missing';
import { oldEnough, youngestFor } from '#libs/science/age';
import type { Protocol, Youngest } from '#libs/science/protocols/types';
import { shortDay } from '../record/day-words.js';
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
  const says = [tooYoung.length === 0 ? `Old enough: ${needed} needed.` : `${needed} needed.`, `${NUMBERS[views] ?? views} ${views === 1 ? 'view' : 'views'}.`, protocol.needsAccreditation ? operatorWords(operators) : ''];
  return { problems, says: says.filter(Boolean).join(' ') };
}

const NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight'];
const youngestWords = (age: Youngest): string => ('days' in age ? `${age.days} days` : `${age.months} months`);

function lifeProblem({ dog }: BookingSource): Problem[] {
  return dog.died ? [{ code: 'DOG_DIED', words: `The dog died on ${shortDay(dog.died)}.` }] : [];
}

function ageProblem({ dog, older }: BookingSource, protocol: Protocol, day: string): Problem[] {
  // Before the latest day of birth a dog may have no age at all, and is too young either way.
  const on = day < dog.birth.latest ? dog.birth.latest : day;
  const answer = oldEnough(protocol, dog.breed, dog.birth, on, older?.[protocol.code]);
  if (answer.ok) return [];
  const { earliestDate, youngest, daysShort } = answer.tooYoung;
  return [{ code: 'TOO_YOUNG', words: `Too young on ${shortDay(day)}, by ${daysShort} ${daysShort === 1 ? 'day' : 'days'}: ${youngestWords(youngest)} needed. Old enough from ${shortDay(earliestDate)}.`, earliestDate }];
}

function placeProblems({ equipment, centres }: BookingSource, protocol: Protocol, day: string, operators: number): Problem[] {
  const problems: Problem[] = [];
  if (!centres.some((c) => c.protocols.includes(protocol.code))) problems.push({ code: 'NO_CENTRE', words: 'No grading centre of the scheme reads this study.' });
  if (protocol.needsAccreditation && operators === 0) problems.push({ code: 'OPERATOR', words: `Nobody here is accredited for it on ${shortDay(day)}. Refer the dog to a practice that is, or choose another day.` });
  for (const kind of protocol.equipment) {
    const latest = equipment.find((e) => e.kind === kind);
    const what = equipmentWords[kind];
    if (!latest) problems.push({ code: 'EQUIPMENT', words: `There is no ${what} here. Refer the dog to a practice that has one.` });
    else if (latest.checkedUntil < day) problems.push({ code: 'EQUIPMENT', words: `The check of the ${what} held until ${shortDay(latest.checkedUntil)}. The practice manager has it checked, or another day is chosen.` });
  }
  return problems;
}

function repeatProblem({ lastResults }: BookingSource, protocol: Protocol, day: string): Problem[] {
  const last = lastResults[protocol.code];
  const earliestDate = last && addDays(last, protocol.repeatAfterDays);
  if (!last || !earliestDate || earliestDate <= day) return [];
  return [{ code: 'REPEAT_TOO_SOON', words: `A result of this study was accepted on ${shortDay(last)}. It is repeated after ${protocol.repeatAfterDays} days, from ${shortDay(earliestDate)}.`, earliestDate }];
}

interface Operator { name: string; until: string }

function operatorsOn({ staff, accreditations }: BookingSource, protocol: string, day: string): Operator[] {
  return staff.filter((s) => s.roles.some((r) => r === 'radiographer' || r === 'vet')).flatMap(({ id, name }) => {
    const held = accreditations.find((a) => a.staff === id && a.protocol === protocol && a.from <= day && a.until >= day);
    return held ? [{ name, until: held.until }] : [];
  });
}

function operatorWords(operators: Operator[]): string {
  const [first, ...others] = operators;
  if (!first) return '';
  if (others.length === 0) return `Operator ${first.name} may take them until ${shortDay(first.until)}.`;
  return `Operators ${[first, ...others.slice(0, -1)].map((o) => o.name).join(', ')} and ${others.at(-1)!.name} may take them.`;
}
