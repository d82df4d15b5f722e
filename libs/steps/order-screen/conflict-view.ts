import type { StudyView } from '#libs/contracts/screens/order';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { differencesOf } from '#libs/science/protocols/differences';
import type { JointReading } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';
import type { Work } from '../record/work.js';
import { agreedJoints } from '../result/joints-of.js';

/** Two readings of the same films that do not say the same: which joints, and what that can tell. Never which one is right. */
export function conflictOf({ facts, evaluation }: Pick<Work, 'facts' | 'evaluation'>, id: string): StudyView['conflict'] {
  const standing = evaluation.studies[id]!;
  const hold = standing.holds.find((h) => h.code === 'RESULTS_DISAGREE');
  if (!hold) return null;
  const named = new Set(hold.detail?.results);
  const arrived = facts('resultArrived').filter((f) => f.study === id);
  const accepted = facts('resultAccepted').filter((f) => f.study === id).at(-1)?.result;
  const conflicting = arrived.filter((f) => named.has(f.result) || f.result === accepted);
  const protocol = findProtocol(standing.protocol, standing.version)!;
  const [one, other] = conflicting.map((f) => agreedJoints(facts, f) as JointReading[] | null);
  const results = conflicting.map((f) => f.result);
  const asked = facts('whichStandsAsked').filter((f) => f.study === id).map((f) => ({ at: f.at, by: (f as { byName?: string }).byName ?? '' }));
  if (!one || !other) return { results, asked, differs: [], told: [t('One of them came by post and is not keyed by two people yet, so the two cannot be held side by side.')] };
  const { joints, told } = differencesOf(protocol, one, other);
  const [a, b] = conflicting;
  const sameReader = a!.detail?.reader && a!.detail.reader === b!.detail?.reader && a!.detail.readOn && a!.detail.readOn === b!.detail?.readOn;
  return { results, asked, differs: joints, told: [...told, ...(sameReader ? [t('Both name the same reader and day, so one of them was written wrongly, not read twice.')] : [])] };
}
