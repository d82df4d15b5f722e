import { Link } from '@tanstack/react-router';
import type { DayBoard } from '#libs/contracts/screens/board';
import { buttonClass } from '../../design/Button.js';
import { Hold, HoldList } from '../../design/Hold.js';
import { Sheet } from '../../design/Sheet.js';

/** Orders that wait for somebody without a visit on this day: films to send, results to accept, readings that never came. */
export function Tasks({ tasks }: { tasks: DayBoard['tasks'] }) {
  if (tasks.length === 0) return null;
  const sorted = [...tasks.filter((t) => t.forMe), ...tasks.filter((t) => !t.forMe)];
  return (
    <Sheet title="Also waits" beside="orders without a visit on this day" className="tasks">
      <HoldList>
        {sorted.map((t) => (
          <Hold key={t.order + t.title} title={t.title} rest={t.rest} who={`${t.dog}, order ${t.accession}${t.forMe ? '. Waits for you' : ''}`}>
            <Link to="/orders/$order" params={{ order: t.order }} className={buttonClass()} aria-label={`Open the order of ${t.dog}`}>
              Open
            </Link>
          </Hold>
        ))}
      </HoldList>
    </Sheet>
  );
}
