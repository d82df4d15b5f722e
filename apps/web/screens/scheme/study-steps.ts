import type { SchemeScreen } from '#libs/contracts/screens/board';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { t } from '../../words/t.js';

/** The road by the codes of the server, in the order in which it is gone. */
const road: Record<string, PageSentence> = {
  asked: 'asked for', imaging: 'being imaged', ready: 'films to send', sealed: 'sealed', sent: 'sent', withCentre: 'with the centre', answered: 'result to check',
  accepted: 'accepted', released: 'letter sent', reported: 'reported',
};
const aside: Record<string, PageSentence> = { rejected: 'sent back by the reader', appealed: 'read a second time', ended: 'ended without a result' };

interface At { at: string; words: string; count: number }
export interface Flow { code: string; protocol: string; along: At[]; beside: At[] }

/** Per study kind, how many stand at each step of the road, and how many left it; steps without any are not drawn. */
export function flows(steps: SchemeScreen['steps']): Flow[] {
  return [...new Set(steps.map((s) => s.protocol))].sort().map((protocol) => {
    const own = steps.filter((s) => s.protocol === protocol);
    const others = [...new Set(own.map((s) => s.at).filter((at) => !(at in road) && !(at in aside)))];
    const stand = (at: string): At => {
      const here = own.filter((s) => s.at === at);
      const words = road[at] ?? aside[at];
      return { at, words: words ? t(words) : (here[0]?.step ?? at), count: here.reduce((sum, s) => sum + s.count, 0) };
    };
    const some = (codes: string[]) => codes.map(stand).filter(({ count }) => count > 0);
    return {
      code: own[0]!.code, protocol,
      along: some(Object.keys(road)),
      beside: some([...Object.keys(aside), ...others]),
    };
  });
}
