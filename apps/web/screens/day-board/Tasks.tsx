import { Link } from '@tanstack/react-router';
import type { DayBoard } from '#libs/contracts/screens/board';
import { buttonClass } from '../../design/Button.js';
import { Hold, HoldList } from '../../design/Hold.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';

/** Orders that wait for somebody without a visit on this day: films to send, results to accept, readings that never came. */
export function Tasks({ tasks }: { tasks: DayBoard['tasks'] }) {
  if (tasks.length === 0) return null;
  const sorted = [...tasks.filter((task) => task.forMe), ...tasks.filter((task) => !task.forMe)];
  return (
    <Sheet title={t('Also waits')} beside={t('orders without a visit on this day')} className="tasks">
      <HoldList>
        {sorted.map((task) => (
          <Hold key={task.order + task.title} title={task.title} rest={task.rest} who={task.forMe ? t('{dog}, order {order}. Waits for you', { dog: task.dog, order: task.accession }) : t('{dog}, order {order}', { dog: task.dog, order: task.accession })}>
            <Link to="/orders/$order" params={{ order: task.order }} className={buttonClass()} aria-label={t('Open the order of {dog}', { dog: task.dog })}>
              {t('Open the order')}
            </Link>
          </Hold>
        ))}
      </HoldList>
    </Sheet>
  );
}
