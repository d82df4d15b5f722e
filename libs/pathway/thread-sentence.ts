import type { Standing } from './evaluation.js';
import type { Knot, KnotState, ThreadLine } from './thread-line.js';
import { retakeWords } from './thread-visit.js';
import { dayWords, holdSentence } from './words.js';

const spoken = (name: string): string => (name === 'goneHome' ? 'gone home' : name);

/** The line as it is heard: never knot by knot. */
export function sentenceOf(kind: 'visit' | 'study', line: Omit<ThreadLine, 'sentence'>, standing: Standing<string>): string {
  const { knots, hold, over, retakes } = line;
  const names = (state: KnotState): string[] => knots.filter((knot) => knot.state === state).map((knot) => spoken(knot.name));
  const again = kind === 'visit' && retakes > 0 ? ` Imaged, ${retakeWords(retakes)}.` : '';
  const ended = names('ended')[0];
  if (ended !== undefined) {
    const why = reasons[standing.step] ?? (standing.why === undefined ? undefined : reasons[standing.why] ?? standing.why);
    return `Ended at: ${ended}.${why === undefined ? '' : ` Why: ${why}.`}`;
  }
  if (over) return kind === 'visit' ? `All steps of the visit done.${again}` : 'All steps of the study done.';

  const done = names('done');
  const parts = done.length > 0 ? [`Done: ${done.join(', ')}.`] : [];
  const sentBack = knots.find((knot) => knot.state === 'sentBack');
  if (sentBack) parts.push(`Sent back${dateOf(sentBack)}.`);
  const here = names('here')[0];
  if (here !== undefined) parts.push(`Now at: ${here}.`);
  if (hold) {
    parts.push(`On hold at: ${names('held')[0] ?? here ?? 'the start'}. ${holdSentence(hold)}`);
  } else if (here === undefined && !sentBack) {
    const next = names('toCome')[0];
    parts.push(done.length === 0 ? `Not begun; next: ${next}.` : `Next: ${next}.`);
  }
  return parts.join(' ') + again;
}

const dateOf = ({ at }: Knot): string => (at === undefined ? '' : `, ${dayWords(at.slice(0, 10))}`);

const reasons: Record<string, string> = {
  withdrawn: 'consent withdrawn', withdrawnAfterSending: 'consent withdrawn after sending', dogDied: 'the dog died',
  cancelled: 'cancelled', order: 'order cancelled', ownerDecided: 'the owner decided', notRepeated: 'not repeated',
  centreClosed: 'the centre closed', notPossible: 'not possible', unwell: 'unwell', identity: 'identity', unfit: 'not fit',
  emergency: 'emergency', missed: 'did not come', died: 'the dog died', notSedated: 'not sedated',
};
