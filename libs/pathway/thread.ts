import { wordsIn, type Words } from '#libs/words/words';
import type { Evaluation, StudyStanding, VisitStanding } from './evaluation.js';
import type { Fact } from './facts.js';
import { type Picture, pictureOf } from './picture.js';
import type { Rules } from './rules.js';
import { verdict } from './study-picture.js';
import type { StudyLine, Thread, VisitLine } from './thread-line.js';
import { studyKnots } from './thread-study.js';
import { sentenceOf } from './thread-sentence.js';
import { visitKnots } from './thread-visit.js';

/** An order drawn as one line a visit, with a road a study that leaves it where the pictures were taken. */
export function thread(facts: readonly Fact[], evaluation: Evaluation, rules: Rules, t: Words = wordsIn('en')): Thread {
  const picture = pictureOf(facts, rules);
  const visits = picture.visits.flatMap((visit) => {
    const standing = evaluation.visits[visit.id];
    return standing ? [visitLine(picture, standing, t)] : [];
  });
  const studies = picture.studies.flatMap((study) => {
    const standing = evaluation.studies[study.id];
    return standing ? [studyLine(picture, standing, evaluation, t)] : [];
  });
  const lines = [...visits, ...studies];
  return {
    visits, studies,
    over: lines.length > 0 && lines.every((line) => line.over),
    sentence: lines.map((line) => line.sentence).join(' '),
  };
}

function visitLine(picture: Picture, standing: VisitStanding, t: Words): VisitLine {
  const visit = picture.visits.find((one) => one.id === standing.id);
  if (!visit) throw new RangeError(`The thread knows no visit ${standing.id}.`);
  const retakes = visit.films.filter((film) => picture.studies.some((study) => verdict(study.facts, film) === 'retake')).length;
  const { knots, hold } = visitKnots(visit, standing, retakes, t);
  const line = { id: visit.id, knots, hold, over: !visit.open, retakes };
  return { ...line, ...(standing.day === undefined ? {} : { day: standing.day }), sentence: sentenceOf('visit', line, standing, t) };
}

function studyLine(picture: Picture, standing: StudyStanding, evaluation: Evaluation, t: Words): StudyLine {
  const study = picture.studies.find((one) => one.id === standing.id);
  if (!study) throw new RangeError(`The thread knows no study ${standing.id}.`);
  const { knots, hold } = studyKnots(study, standing, t);
  const judged = new Set(study.facts.all('verdictGiven').map((fact) => fact.exposure));
  const retakes = [...judged].filter((id) => verdict(study.facts, { id }) === 'retake').length;
  const line = { id: study.id, knots, hold, over: !study.open, retakes };
  const imagedNotSent = evaluation.order.imagedNotSent.includes(study.id);
  return {
    ...line, imagedNotSent,
    fromVisit: study.served.at(-1)?.visit ?? study.visit?.id ?? null,
    sentence: [sentenceOf('study', line, standing, t), imagedNotSent ? t.known('Imaged, not sent.') : ''].filter(Boolean).join(' '),
  };
}
