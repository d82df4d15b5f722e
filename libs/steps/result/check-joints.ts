import type { Joint } from '#libs/contracts/common';
import { checkReading, type Problem } from '#libs/science/protocols/check-reading';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';

export function protocolOf(work: Work, study: string): Protocol {
  const standing = work.evaluation.studies[study]!;
  const protocol = findProtocol(standing.protocol, standing.version);
  if (!protocol) throw new StepError('HELD', t('This protocol version is not installed.'));
  return protocol;
}

/** What cannot be meant is refused with every reason at once; what is only unlikely is handed back for the vet to look at. */
export function checkJoints(protocol: Protocol, joints: Joint[]): { joints: JointReading[]; ask: Problem[] } {
  const reading = joints as JointReading[];
  const problems = checkReading(protocol, reading);
  const refused = problems.filter((p) => p.weight === 'refuse');
  if (refused.length > 0) throw new StepError('BAD_INPUT', refused.map((p) => t.said(p.told)).join(' '), { fields: refused.map((p) => ({ path: `joints.${p.joint ?? ''}`, message: t.said(p.told) })) });
  return { joints: reading, ask: problems };
}
