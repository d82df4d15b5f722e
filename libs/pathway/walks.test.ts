import fc from 'fast-check';
import { decide } from './decide.js';
import { evaluate } from './evaluate.js';
import { Chooser } from './examples/chooser.js';
import { endless, stuck } from './examples/invariants.js';
import { readExamples } from './examples/read.js';
import { type Stride, walk } from './examples/walk.js';
import { pictureOf } from './picture.js';
import { type Move, studyMoves, studyReturns, visitMoves } from './roads.js';

const { rules } = readExamples();
/** The same walks for every property, other ones each time; a failure names its seed. */
const runs = { numRuns: 40, seed: Math.floor(Math.random() * 2 ** 31) };
const seeds = fc.nat();
const known = new Map<number, Stride[]>();
function walkOf(seed: number): Stride[] {
  const walked = known.get(seed) ?? walk(new Chooser(seed), 80, rules);
  known.set(seed, walked);
  return walked;
}

describe('along allowed actions', () => {
  it('always leaves a next action, or an end, and a way out of every hold', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const strides = walkOf(seed);
      for (const { after } of strides) {
        expect(stuck(after.evaluation)).toEqual([]);
        expect(endless(after.evaluation)).toEqual([]);
      }
    }), runs);
  });

  it('lets a role that may do it do it, and nobody else', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const strides = walkOf(seed);
      for (const { before, action, on, after } of strides) {
        expect(decide(before.evaluation, action, on, after.facts.at(-1)?.role ?? 'queue')).toEqual({ allowed: true });
      }
    }), runs);
  });

  it('never forbids stopping imaging while a dog is asleep', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const strides = walkOf(seed);
      for (const visit of strides.flatMap(({ after }) => Object.values(after.evaluation.visits))) {
        if (visit.step === 'sedated') expect(visit.next).toEqual(expect.arrayContaining(['stopImaging', 'recordReading', 'recordDrug']));
        if (visit.step === 'imaged') expect(visit.next).toEqual(expect.arrayContaining(['signRecovery', 'recordReading']));
      }
    }), runs);
  });

  it('lets every film of a sent study travel, or says that one has not', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const strides = walkOf(seed);
      const last = strides.at(-1)?.after;
      for (const study of last ? pictureOf(last.facts, rules).studies : []) {
        const standing = last?.evaluation.studies[study.id];
        if (!study.packages.live || study.step === 'ended') continue;
        const packed = study.packages.family.flatMap((one) => one.exposures);
        const left = study.served.filter((film) => !film.disowned && !film.lost && !packed.includes(film.id));
        if (left.length > 0) expect(standing?.holds.map((hold) => hold.code)).toContain('FILM_NOT_SENT');
      }
    }), runs);
  });

  it('counts a film that was never sent until it is sent or is not this study’s', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const strides = walkOf(seed);
      for (const { before, action, after } of strides) {
        const gone = before.evaluation.order.imagedNotSent.filter((id) => !after.evaluation.order.imagedNotSent.includes(id));
        if (gone.length > 0) expect(['send', 'disownFilm', 'assignFilm']).toContain(action);
      }
    }), runs);
  });

  it('releases a result letter only for an accepted result, and never while two differ', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const strides = walkOf(seed);
      for (const { before, action, on } of strides) {
        if (action !== 'releaseLetter') continue;
        expect(before.evaluation.studies[on.id]?.step).toBe('accepted');
        expect(before.evaluation.order.allHolds).not.toContain('RESULTS_DISAGREE');
      }
    }), runs);
  });

  it('leaves the other studies as they were when something is said of one', () => {
    fc.assert(fc.property(seeds, (seed) => {
      for (const { before, action, on, after } of walkOf(seed)) {
        // A film may serve several, and a letter may wait for the others.
        if (on.scope !== 'study' || action === 'takeView') continue;
        const then = evaluate(before.facts, after.now, rules);
        for (const id of Object.keys(then.studies).filter((other) => other !== on.id)) {
          expect(after.evaluation.studies[id]).toEqual(then.studies[id]);
        }
      }
    }), runs);
  });

  it('carries nothing of one visit over to the next', () => {
    fc.assert(fc.property(seeds, (seed) => {
      for (const { action, before, after } of walkOf(seed)) {
        if (action !== 'openVisit') continue;
        const opened = Object.values(after.evaluation.visits).filter((visit) => !(visit.id in before.evaluation.visits));
        expect(opened.flatMap((visit) => visit.holds.map((hold) => hold.code)))
          .toEqual(expect.arrayContaining(['NO_SLOT', 'ESTIMATE_NOT_ACCEPTED', 'ANSWERS_MISSING', 'CONSENT_SEDATION_MISSING']));
      }
    }), runs);
  });

  it('follows the drawn roads', () => {
    fc.assert(fc.property(seeds, (seed) => {
      const strides = walkOf(seed);
      for (const stride of strides) expect(undrawn(stride)).toEqual([]);
    }), runs);
  });

  it('reaches the end of the road, or these walks would prove little', () => {
    const reached = new Set(Array.from({ length: 8 }, (_, seed) => walk(new Chooser(seed), 120, rules, true))
      .flatMap((strides) => strides.flatMap(({ after }) => Object.values(after.evaluation.studies).map((study) => study.step))));
    expect([...reached]).toEqual(expect.arrayContaining(['ready', 'sent', 'released', 'reported']));
  });
});

/** Moves of a visit or study that an action on that very thing made and that no road shows. */
function undrawn({ before, action, on, after }: Stride): string[] {
  if (on.scope === 'order') return [];
  const [from, to] = [before, after].map(({ evaluation }) =>
    (on.scope === 'visit' ? evaluation.visits[on.id] : evaluation.studies[on.id])?.step);
  if (from === undefined || from === to || studyReturns.includes(action)) return [];
  const moves: readonly Move<string>[] = on.scope === 'visit' ? visitMoves : studyMoves;
  const drawn = moves.some((move) => move.from.includes(from) && move.by.includes(action) && move.to === to);
  return drawn ? [] : [`${on.scope}: ${from} by ${action} to ${to}`];
}
