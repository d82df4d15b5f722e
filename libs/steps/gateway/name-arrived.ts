import { randomUUID } from 'node:crypto';
import type { Says } from '#libs/dicom/says';
import { decide } from '#libs/pathway/decide';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { View } from '#libs/science/protocols/types';
import { exposureOf } from '../imaging/take-view.js';
import type { Actor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn, type Work } from '../record/work.js';
import { viewSaid } from './view-said.js';

/** Makes an exposure of an image that says which of the order's views it is, when the order may have one now. Else the image waits for a person. */
export async function nameArrived(deps: StepDeps, actor: Actor, order: string, image: string, said: Says): Promise<'named' | 'waits'> {
  return deps.db.practice(actor.practice, async (tx) => {
    const record = await lockOrder(tx, order);
    if (!record) return 'waits';
    const work = workOn(tx, deps.clock.now(), actor, record, deps.publicUrl);
    if (work.facts('exposureTaken').some((f) => f.image === image)) return 'named';
    const asked = viewsAsked(work);
    const view = viewSaid(said, [...asked.keys()]);
    const serves = view && asked.get(view);
    if (!serves) return 'waits';
    const { kv, mas, distanceCm, exposureIndex, deviationIndex } = said;
    const taken = { view: view.code, serves, image, people: [], technique: { kv, mas, distanceCm, exposureIndex, deviationIndex }, marker: null };
    await append(work, await exposureOf(work, serves[0]!, taken), { key: randomUUID(), role: 'queue', action: 'takeView' });
    return 'named';
  });
}

/** Each view that may be taken now, with the studies that it serves. */
function viewsAsked({ evaluation }: Work): Map<View, string[]> {
  const byCode = new Map<string, { view: View; studies: string[] }>();
  for (const [study, standing] of Object.entries(evaluation.studies)) {
    if (!decide(evaluation, 'takeView', { scope: 'study', id: study }, 'queue').allowed) continue;
    for (const view of findProtocol(standing.protocol, standing.version)?.views ?? []) {
      const known = byCode.get(view.code);
      if (known) known.studies.push(study);
      else byCode.set(view.code, { view, studies: [study] });
    }
  }
  return new Map([...byCode.values()].map(({ view, studies }) => [view, studies]));
}
