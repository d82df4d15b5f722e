import type { Road, ThreadScreen } from '#libs/contracts/screens/order';
import { inside, knotMoment } from './format.js';
import { dayOfLine, wordsBeside, type Knot } from './thread-words.js';
import { t } from '../words/t.js';

type Item = { className: string; first: string; at?: string; rest: string; held?: boolean };

/** The thread on a phone: it hangs, and what is done steps together into one knot. */
export function HangingThread({ thread, zone }: { thread: ThreadScreen; zone: string }) {
  const items = [...thread.visits, ...thread.studies].flatMap((r) => itemsOf(r, zone));
  return (
    <ol className="hang narrow" aria-hidden="true">
      {items.map((item, i) => (
        <li key={i} className={[item.className, items[i + 1]?.className === 'hold' && 'pre'].filter(Boolean).join(' ')}>
          {item.held ? (
            <span className="held-words">
              <b>{item.first}</b> {item.rest}
            </span>
          ) : (
            <>
              <b>{item.first}</b> {item.at && <span className="by">{item.at}</span>}
              {item.rest && <span className="by block">{item.rest}</span>}
            </>
          )}
        </li>
      ))}
    </ol>
  );
}

function itemsOf(road: Road, zone: string): Item[] {
  const day = dayOfLine(road, zone);
  const when = (k: Knot) => (k.at ? knotMoment(k.at, zone, day) : '');
  const brief = (k: Knot) => [`${inside(k.name)}${k.at ? ` ${when(k)}` : ''}`, ...(k.retakes > 0 ? [t('again')] : [])].join(', ');
  const done = road.knots.filter((k) => k.state === 'done');
  const toCome = road.knots.filter((k) => k.state === 'toCome');
  const said = wordsBeside(road);
  const lastDone = done.at(-1);
  return [
    ...(lastDone ? [{ className: '', first: `${road.label}: ${inside(lastDone.name)}`, at: when(lastDone), rest: done.slice(0, -1).map(brief).join(', ') }] : []),
    ...road.knots.filter((k) => k.state === 'sentBack').map((k) => ({ className: '', first: `${road.label}: ${inside(k.name)}`, at: when(k), rest: k.note ?? '' })),
    ...(road.hold && said ? [{ className: 'hold', first: said.first, rest: said.rest, held: true }] : []),
    ...(road.hold ? [] : road.knots.filter((k) => k.state === 'here').map((k) => ({ className: road.dashed ? 'wait' : 'now', first: `${road.label}: ${inside(k.name)}`, rest: k.note ?? '' }))),
    ...(road.ended ? [{ className: 'end', first: t('{label}: ended', { label: road.label }), rest: road.ended }] : []),
    ...(toCome.length > 0 && !road.ended ? [{ className: 'to', first: '', rest: `${road.label}: ${toCome.map((k) => inside(k.name)).join(', ')}` }] : []),
  ];
}
