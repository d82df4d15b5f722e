import type { SchemeScreen } from '#libs/contracts/screens/board';

const road = ['asked', 'imaging', 'ready', 'sealed', 'sent', 'withCentre', 'answered', 'accepted', 'released', 'reported'];
const aside = ['rejected', 'appealed', 'ended'];
const words: Record<string, string> = {
  asked: 'asked for', imaging: 'being imaged', ready: 'films to send', sealed: 'packed', sent: 'sent', withCentre: 'with the centre', answered: 'result to check', accepted: 'letter to write', released: 'letter sent', reported: 'reported',
  rejected: 'sent back by the reader', appealed: 'read a second time', ended: 'ended without a result',
};

export interface Flow { protocol: string; along: { step: string; words: string; count: number }[]; beside: { words: string; count: number }[] }

/** Per study kind, how many stand at each step of the road, and how many left it; steps without any are not drawn. */
export function flows(steps: SchemeScreen['steps']): Flow[] {
  return [...new Set(steps.map((s) => s.protocol))].sort().map((protocol) => {
    const count = (step: string) => steps.filter((s) => s.protocol === protocol && s.step === step).reduce((sum, s) => sum + s.count, 0);
    const known = new Set([...road, ...aside]);
    const others = [...new Set(steps.filter((s) => s.protocol === protocol && !known.has(s.step)).map((s) => s.step))];
    return {
      protocol,
      along: road.map((step) => ({ step, words: words[step] ?? step, count: count(step) })).filter((s) => s.count > 0),
      beside: [...aside, ...others].map((step) => ({ words: words[step] ?? step, count: count(step) })).filter((s) => s.count > 0),
    };
  });
}
