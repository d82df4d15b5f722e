import { useState } from 'react';
import type { OrderScreen, StudyView } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { momentAt } from '../../design/format.js';
import { t } from '../../words/t.js';
import { ActPanel } from '../order/ActPanel.js';

/** The question goes by mail from here; when it went stands beside it, and it may be asked again. */
export function AskCentre({ screen, study, asked }: { screen: OrderScreen; study: StudyView; asked: { at: string; by: string }[] }) {
  const [open, setOpen] = useState(false);
  const next = screen.next.find((n) => n.action === 'askWhichStands' && n.on.id === study.id && n.yours);
  return (
    <>
      <ul className="lines">
        {asked.map(({ at, by }) => (
          <li key={at}>
            {t('Asked by mail on {moment}, {name}.', { moment: momentAt(at, screen.practice.zone), name: by })}
          </li>
        ))}
      </ul>
      {next && !open && <Button onPress={() => setOpen(true)}>{asked.length > 0 ? t('Ask again') : next.label}</Button>}
      {next && open && <ActPanel screen={screen} next={next} onClose={() => setOpen(false)} />}
    </>
  );
}
