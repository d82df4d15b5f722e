import type { SchemeScreen } from '#libs/contracts/screens/board';
import { Sheet } from '../../design/Sheet.js';
import { dayAt, fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import { perThousand } from './per-thousand.js';
import { Told } from '../../words/Told.js';

type Harm = SchemeScreen['harm'];

/** Deaths and harm over the whole scheme. No practice is named: with so few, chance would make the order. */
export function HarmSheet({ harm, zone }: { harm: Harm; zone: string }) {
  return (
    <Sheet title={t('Deaths and harm among sedated dogs')}>
      {harm.sedated === 0 || !harm.since ? (
        <p>{t('No dog has been sedated yet.')}</p>
      ) : (
        <>
          <p>
            <Told strong="num" text={t('Since {day}, **{visits}** {visits, plural, one {visit} other {visits}} with sedation.', { day: fullDay(dayAt(harm.since, zone)), visits: harm.sedated })} />
          </p>
          <ul className="lines">
            <Line words={t('{count, plural, one {# dog died in care} other {# dogs died in care}}', { count: harm.diedInCare.count })} counted={harm.diedInCare} />
            <Line words={t('{count, plural, one {# dog came to harm} other {# dogs came to harm}}', { count: harm.harmed.count })} counted={harm.harmed} />
          </ul>
          <p className="small quiet">{t('In brackets: where the true share lies with 95 % certainty (Wilson), as far as these few can tell. None so far does not mean none. Counted for the whole scheme; with numbers like these an order of practices would be an order of chance.')}</p>
        </>
      )}
    </Sheet>
  );
}

function Line({ words, counted: { interval } }: { words: string; counted: Harm['harmed'] }) {
  return (
    <li>
      {words}
      {interval && ` ${t('({lower} to {upper} of 1,000)', { lower: perThousand(interval.lower), upper: perThousand(interval.upper) })}`}
    </li>
  );
}
