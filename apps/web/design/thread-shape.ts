import type { Road } from '#libs/contracts/screens/order';

export type Drawn = { name: string; className: string; endBar: boolean; arc: boolean };

/** From the states of the knots to what is drawn: which road is thick, thin, cut off or dashed. */
export function shape(road: Road): Drawn[] {
  const stop = road.knots.findIndex((k) => k.state === 'ended');
  const knots = stop < 0 ? road.knots : road.knots.slice(0, stop + 1);
  const firstToCome = knots.findIndex((k) => k.state === 'toCome');
  const someoneHere = knots.some((k) => k.state === 'here' || k.state === 'held');
  const dashedAt = road.dashed ? dashedKnot(knots) : -1;
  return knots.map((k, i) => {
    const next = knots[i + 1];
    const beforeHold = next?.state === 'held' && (k.state === 'done' || k.state === 'sentBack');
    const beforeNothing = !someoneHere && i + 1 === firstToCome && k.state === 'done';
    const classes = [
      mark[k.state],
      !someoneHere && i === firstToCome && 'next',
      beforeHold && 'pre',
      beforeNothing && 'bnext',
      i === dashedAt && 'wait',
      k.retakes > 0 && 'loop',
      i === knots.length - 1 && 'last',
    ];
    return { name: k.name, className: classes.filter(Boolean).join(' '), endBar: beforeHold, arc: k.retakes > 0 };
  });
}

const mark = { done: 'done', here: 'now', toCome: 'to', sentBack: 'done back', ended: 'end', held: 'hold' } as const;

function dashedKnot(knots: Road['knots']): number {
  const here = knots.findIndex((k) => k.state === 'here');
  return here >= 0 ? here : knots.findLastIndex((k) => k.state === 'done');
}
