import { Fragment, type ReactNode } from 'react';

/** Stands in a sentence for the one thing that is more than text, a link. */
export const HERE = '\u0001';

/** A sentence with its bold parts, and with `here` where it says so: the order is the language's own. */
export function Told({ text, here, strong }: { text: string; here?: ReactNode; strong?: string }) {
  return text.split('**').map((part, i) => {
    const [before, after] = part.split(HERE);
    const whole = after === undefined ? before : <>{before}{here}{after}</>;
    return i % 2 === 1 ? <b key={i} className={strong}>{whole}</b> : <Fragment key={i}>{whole}</Fragment>;
  });
}
