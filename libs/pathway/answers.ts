import { isAfter } from './effective.js';
import { type Answer, type FactOf, type Question, questions } from './facts.js';
import type { VisitPicture } from './visit-picture.js';

export interface Answers {
  missing: Question[];
  missingToday: Question[];
  unknown: Question[];
  toJudge: Question[];
  pregnant: boolean;
  postponed: FactOf<'answersJudged'> | undefined;
}

/** What the owner said of the dog's health, and what a vet made of it. Later answers win, question by question. */
export function answersOf(visit: VisitPicture, today: string): Answers {
  const given = visit.facts.all('answersGiven');
  const judged = visit.facts.last('answersJudged');
  const last = new Map<Question, { answer: Answer; fact: FactOf<'answersGiven'> }>();
  const asked = new Set<Question>();
  for (const fact of given) {
    for (const question of questions) {
      const answer = fact.answers[question];
      if (answer === undefined) continue;
      last.set(question, { answer, fact });
      if (fact.stage === 'admission') asked.add(question);
    }
  }
  // Once the day that the vet named has come, the dog is looked at again.
  const expired = judged !== undefined && !judged.go && judged.until !== undefined && today >= judged.until;
  const open = (wanted: Answer) => questions.filter((question) => {
    const said = last.get(question);
    return said?.answer === wanted && (expired || !isAfter(judged, said.fact));
  });
  const bookedLater = judged?.until !== undefined && (visit.booking?.day ?? '') >= judged.until;
  return {
    missing: questions.filter((question) => !last.has(question)),
    missingToday: questions.filter((question) => !asked.has(question)),
    unknown: open('unknown'),
    toJudge: open('yes').filter((question) => question !== 'pregnant'),
    pregnant: last.get('pregnant')?.answer === 'yes',
    postponed: judged && !judged.go && !expired && !bookedLater ? judged : undefined,
  };
}
