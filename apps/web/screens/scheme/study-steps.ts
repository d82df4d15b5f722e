import type { SchemeScreen } from '#libs/contracts/screens/board';

/** The road in the words of the server, in the order in which it is gone. */
const road = ['Asked for', 'Being imaged', 'Films to send', 'Sealed', 'Sent', 'With the centre', 'Result to check', 'Accepted', 'Letter sent', 'Reported'];
const aside: Record<string, string> = { 'Sent back': 'sent back by the reader', 'Second reading': 'read a second time', Ended: 'ended without a result' };

export interface Flow { protocol: string; along: { step: string; words: string; count: number }[]; beside: { words: string; count: number }[] }

/** Per study kind, how many stand at each step of the road, and how many left it; steps without any are not drawn. */
export function flows(steps: SchemeScreen['steps']): Flow[] {
  return [...new Set(steps.map((s) => s.protocol))].sort().map((protocol) => {
    const count = (step: string) => steps.filter((s) => s.protocol === protocol && s.step === step).reduce((sum, s) => sum + s.count, 0);
    const others = [...new Set(steps.filter((s) => s.protocol === protocol && !road.includes(s.step) && !(s.step in aside)).map((s) => s.step))];
    return {
      protocol,
      along: road.map((step) => ({ step, words: small(step), count: count(step) })).filter((s) => s.count > 0),
      beside: [...Object.keys(aside), ...others].map((step) => ({ words: aside[step] ?? small(step), count: count(step) })).filter((s) => s.count > 0),
    };
  });
}

const small = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);
