import type { Work } from '../record/work.js';
import type { EstimateFor } from './estimate-of.js';

/**
 * What a visit costs: the views that are still missing. The reading and the sending were agreed to with an earlier
 * visit whose films serve the study; what has left the house is sent, and charged, once more.
 */
export function visitCharges({ facts, evaluation, order }: Pick<Work, 'facts' | 'evaluation' | 'order'>, visit: string): EstimateFor['studies'] {
  const agreed = new Set(facts('estimateAccepted').filter((f) => f.visit !== visit).map((f) => f.visit));
  return (evaluation.visits[visit]?.studies ?? []).flatMap((id) => {
    const study = evaluation.studies[id];
    const centre = study && order.centres[study.centre];
    if (!study || !centre) return [];
    const paid = facts('exposureTaken').some((f) => agreed.has(f.visit) && f.serves.includes(id));
    const sent = facts('packageSent').some((f) => f.study === id);
    return [{ protocol: study.protocol, version: study.version, centre, views: study.missing, reading: !paid, sending: !paid || sent }];
  });
}
