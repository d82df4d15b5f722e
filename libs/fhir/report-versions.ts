import { compareFacts } from '#libs/pathway/effective';
import type { Fact, FactOf } from '#libs/pathway/facts';
import type { StudyPicture } from '#libs/pathway/study-picture';

export interface ReportVersion {
  status: 'registered' | 'final' | 'amended' | 'entered-in-error' | 'cancelled';
  /** The reading that it shows; withdrawn where the status says so. */
  result?: FactOf<'resultArrived'>;
  accepted?: FactOf<'resultAccepted'>;
  by: Fact;
}

/** What could be read of a study's report, from the first sending to now: nothing that was once said is lost. */
export function reportVersions({ facts, step }: StudyPicture): ReportVersion[] {
  const versions: ReportVersion[] = [];
  const sent = facts.first('packageSent');
  if (sent) versions.push({ status: 'registered', by: sent });
  const accepted: FactOf<'resultAccepted'>[] = [];
  const out = new Set<string>();
  for (const fact of [...facts.all('resultAccepted'), ...facts.all('resultWithdrawn'), ...facts.all('resultRefused')].sort(compareFacts)) {
    if (fact.type === 'resultAccepted') accepted.push(fact);
    else out.add(fact.result);
    const standing = accepted.findLast(({ result }) => !out.has(result));
    const before = versions.findLast((version) => version.result);
    if (accepted.length === 0 || (standing?.result === before?.result?.result && before?.status !== 'entered-in-error')) continue;
    // What is withdrawn is what was last said to stand.
    const shown = standing ?? before?.accepted ?? accepted.at(-1)!;
    const result = facts.latest('resultArrived', (arrived) => arrived.result === shown.result);
    if (result) versions.push({ status: !standing ? 'entered-in-error' : before ? 'amended' : 'final', result, accepted: shown, by: fact });
  }
  const ended = facts.first('studyEnded') ?? facts.last('consentWithdrawn');
  if (step === 'ended' && versions.length === 1 && ended) versions.push({ status: 'cancelled', by: ended });
  return versions;
}
