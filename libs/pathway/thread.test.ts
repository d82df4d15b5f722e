import { evaluate } from './evaluate.js';
import type { Fact } from './facts.js';
import { readExamples } from './examples/read.js';
import { thread } from './thread.js';

const { named, rules } = readExamples();
const drawn = (name: string) => {
  const { facts, now } = named(name);
  return thread(facts, evaluate(facts, now, rules), rules);
};
const states = (line: { knots: { name: string; state: string }[] } | undefined) =>
  Object.fromEntries(line?.knots.map((knot) => [knot.name, knot.state]) ?? []);

describe('the thread', () => {
  it('has no ring for a dog that is still expected', () => {
    expect(drawn('on the day, everything agreed').visits[0]?.sentence).toBe('Done: booked, consent. Next: admitted.');
  });

  it('breaks where somebody is waited for, and says for whom', () => {
    const [visit] = drawn('booked for tomorrow').visits;
    expect(states(visit)).toMatchObject({ booked: 'done', consent: 'held', admitted: 'toCome' });
    expect(visit?.hold?.code).toBe('ESTIMATE_NOT_ACCEPTED');
    expect(visit?.sentence).toBe('Done: booked. On hold at: consent. Estimate not accepted. The owner says yes by link, by phone or on paper. By Thursday 26 November.');
  });

  it('does not break for the next ordinary thing to do', () => {
    const [visit] = drawn('asleep, not yet scanned at the table').visits;
    expect(visit?.hold).toBeNull();
    expect(visit?.sentence).toBe('Done: booked, consent, admitted. Now at: sedated.');
  });

  it('shows a retake at the pictures', () => {
    const [visit] = drawn('retake while the dog still sleeps').visits;
    expect(visit?.knots.find((knot) => knot.name === 'imaged')).toMatchObject({ state: 'here', note: 'one retake' });
  });

  it('shows none any more once it was taken back, and the film waits to be judged', () => {
    const { facts, now } = named('retake while the dog still sleeps');
    const retake = facts.findLast((fact) => fact.type === 'verdictGiven' && fact.verdict === 'retake')!;
    const all: Fact[] = [...facts, { ...retake, id: 'taken back', at: now, rec: now, verdict: 'undecided', reasons: [] } as Fact];
    const evaluation = evaluate(all, now, rules);
    expect(thread(all, evaluation, rules).visits[0]?.knots.find((knot) => knot.name === 'imaged')?.note).toBeUndefined();
    expect(Object.values(evaluation.studies).flatMap((study) => study.holds.map((hold) => hold.code))).toContain('VERDICT_MISSING');
  });

  it('lets each study leave the visit that took its films', () => {
    const { studies } = drawn('hips reported while elbows are with the centre');
    expect(studies.map((study) => [study.fromVisit, study.over])).toEqual([['v4', true], ['v4', false]]);
  });

  it('crosses the knot where films were sent back', () => {
    const [study] = drawn('films rejected by the centre').studies;
    expect(states(study)).toMatchObject({ sent: 'done', received: 'sentBack', read: 'held' });
    expect(study?.sentence).toContain('Sent back, Wednesday 25 November.');
  });

  it('says of films that never left that they have not been sent', () => {
    expect(drawn('withdrawn after imaging, before sending: counted as imaged, not sent').studies[0]?.sentence)
      .toBe('Ended at: checked. Why: consent withdrawn. Imaged, not sent.');
  });

  it('steps back when all is done', () => {
    expect(drawn('letter delivered')).toMatchObject({ over: true, sentence: 'All steps of the visit done. All steps of the study done.' });
  });
});
