import { useState } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Button } from '../../../design/Button.js';
import { Sheet } from '../../../design/Sheet.js';
import { dayAt, longDay, timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';

const FIRST = 14;

/** Newest first; nothing is ever taken out of it. */
export function Happened({ screen }: { screen: OrderScreen }) {
  const [all, setAll] = useState(false);
  const zone = screen.practice.zone;
  const entries = [...screen.happened].sort((a, b) => b.at.localeCompare(a.at));
  const shown = all ? entries : entries.slice(0, FIRST);
  const today = dayAt(screen.now, zone);
  const days = [...new Set(shown.map((e) => dayAt(e.at, zone)))];
  return (
    <Sheet title={t('What happened')}>
      <ol className="log">
        {days.flatMap((day) => [
          <li key={day} className="day">
            {day === today ? t('Today, {day}', { day: longDay(day) }) : longDay(day)}
          </li>,
          ...shown
            .filter((e) => dayAt(e.at, zone) === day)
            .map((e, i) => (
              <li key={`${e.at}${i}`}>
                <time dateTime={e.at}>{timeAt(e.at, zone)}</time>
                <div>
                  {e.what} {!e.what.endsWith(e.by) && <span>{e.by}</span>}
                  {e.late && <span>, {t('entered late')}</span>}
                </div>
              </li>
            )),
        ])}
      </ol>
      {!all && entries.length > FIRST && (
        <p>
          <Button kind="text" onPress={() => setAll(true)}>
            {t('All {count} entries', { count: entries.length })}
          </Button>
        </p>
      )}
    </Sheet>
  );
}
