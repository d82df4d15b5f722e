import type { Words } from '#libs/words/words';
import type { Standing } from './evaluation.js';
import type { KnotState, ThreadLine } from './thread-line.js';
import { retakeWords } from './thread-visit.js';
import { dayWords, holdSentence } from './words.js';

/** The line as it is heard: never knot by knot. */
export function sentenceOf(kind: 'visit' | 'study', line: Omit<ThreadLine, 'sentence'>, standing: Standing<string>, t: Words): string {
  const { knots, hold, over, retakes } = line;
  const spoken = (name: string): string => t.known(name === 'goneHome' ? 'gone home' : name);
  const names = (state: KnotState): string[] => knots.filter((knot) => knot.state === state).map((knot) => spoken(knot.name));
  const again = kind === 'visit' && retakes > 0 ? [t.known('Imaged, {retakes}.', { retakes: retakeWords(retakes, t) })] : [];
  const ended = names('ended')[0];
  if (ended !== undefined) {
    const why = reasons[standing.step] ?? (standing.why === undefined ? undefined : reasons[standing.why] ?? standing.why);
    return [t.known('Ended at: {knot}.', { knot: ended }), ...(why === undefined ? [] : [t.known('Why: {why}.', { why: t.known(why) })])].join(' ');
  }
  if (over) return kind === 'visit' ? [t.known('All steps of the visit done.'), ...again].join(' ') : t.known('All steps of the study done.');

  const done = names('done');
  const parts = done.length > 0 ? [t.known('Done: {knots}.', { knots: done.join(', ') })] : [];
  const sentBack = knots.find((knot) => knot.state === 'sentBack');
  if (sentBack) parts.push(sentBack.at === undefined ? t.known('Sent back.') : t.known('Sent back, {day}.', { day: dayWords(sentBack.at.slice(0, 10), t.language) }));
  const here = names('here')[0];
  if (here !== undefined) parts.push(t.known('Now at: {knot}.', { knot: here }));
  if (hold) {
    parts.push(t.known('On hold at: {knot}.', { knot: names('held')[0] ?? here ?? t.known('the start') }), holdSentence(hold, { t }));
  } else if (here === undefined && !sentBack) {
    const next = names('toCome')[0] ?? '';
    parts.push(done.length === 0 ? t.known('Not begun; next: {knot}.', { knot: next }) : t.known('Next: {knot}.', { knot: next }));
  }
  return [...parts, ...again].join(' ');
}

const reasons: Record<string, string> = {
  withdrawn: 'consent withdrawn', withdrawnAfterSending: 'consent withdrawn after sending', dogDied: 'the dog died',
  cancelled: 'cancelled', order: 'order cancelled', ownerDecided: 'the owner decided', notRepeated: 'not repeated',
  centreClosed: 'the centre closed', notPossible: 'not possible', unwell: 'unwell', identity: 'identity', unfit: 'not fit',
  emergency: 'emergency', missed: 'did not come', died: 'the dog died', notSedated: 'not sedated',
};
