import { currentProtocols, findProtocol } from '#libs/science/protocols/catalogue';
import type { FitnessProblem } from '#libs/pathway/facts';
import { isOpenStudy } from '#libs/pathway/steps';
import { fitnessOf } from '../booking/check-fitness.js';
import { queueActor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { tellDesk } from './tell-desk.js';
import { workOn, type Stated, type Work } from '../record/work.js';

/** What the register says today of a visit to come, written down only where it differs from what was last written. */
export async function checkAhead(deps: StepDeps, order: string): Promise<void> {
  await deps.db.system('check ahead', async (tx) => {
    const record = await lockOrder(tx, order);
    if (!record) return;
    const work = workOn(tx, deps.clock.now(), queueActor(record.practice), record, deps.publicUrl);
    const stated = [...(await changedFitness(work)), ...changedProtocols(work)];
    if (stated.length === 0) return;
    const before = work.evaluation;
    await append(work, stated, { action: 'lookAhead' });
    await tellDesk(work, before);
  });
}

async function changedFitness(work: Work): Promise<Stated[]> {
  const changed: Stated[] = [];
  for (const visit of Object.values(work.evaluation.visits).filter((v) => v.step === 'booked')) {
    for (const now of await fitnessOf(work, visit.id)) {
      if (now.type !== 'fitnessChecked') continue;
      const before = work.facts('fitnessChecked').findLast((f) => f.visit === now.visit && f.study === now.study);
      if (told(before?.problems) !== told(now.problems)) changed.push(now);
    }
  }
  return changed;
}

const told = (problems: FitnessProblem[] = []): string => problems.map((p) => `${p.code} ${p.until ?? ''}`).sort().join(', ');

/** A newer version is told of while no film is taken; with it comes the text that its consent is given to. */
function changedProtocols(work: Work): Stated[] {
  const filmed = new Set(work.facts('exposureTaken').flatMap((f) => f.serves));
  return Object.values(work.evaluation.studies).filter((s) => isOpenStudy(s.step) && !filmed.has(s.id)).flatMap((study): Stated[] => {
    const newest = currentProtocols().find((p) => p.code === study.protocol);
    if (!newest || newest.version === study.version || work.facts('protocolChanged').some((f) => f.study === study.id && f.version === newest.version)) return [];
    const text = findProtocol(study.protocol, study.version)?.consentText === newest.consentText ? {} : { consentText: newest.consentText };
    return [{ type: 'protocolChanged', study: study.id, version: newest.version, ...text }];
  });
}
