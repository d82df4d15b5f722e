import type { SchemeScreen } from '#libs/contracts/screens/board';
import { Sheet } from '../../design/Sheet.js';
import { dayAt, fullDay, plural } from '../../design/format.js';
import { perThousand } from './per-thousand.js';

type Harm = SchemeScreen['harm'];

/** Deaths and harm over the whole scheme. No practice is named: with so few, chance would make the order. */
export function HarmSheet({ harm, zone }: { harm: Harm; zone: string }) {
  return (
    <Sheet title="Deaths and harm among sedated dogs">
      {harm.sedated === 0 || !harm.since ? (
        <p>No dog has been sedated yet.</p>
      ) : (
        <>
          <p>
            Since {fullDay(dayAt(harm.since, zone))}, <b className="num">{harm.sedated}</b> {harm.sedated === 1 ? 'visit' : 'visits'} with sedation.
          </p>
          <ul className="lines">
            <Line words={plural(harm.diedInCare.count, 'dog died in care', 'dogs died in care')} counted={harm.diedInCare} />
            <Line words={plural(harm.harmed.count, 'dog came to harm', 'dogs came to harm')} counted={harm.harmed} />
          </ul>
          <p className="small quiet">In brackets: where the true share lies with 95 % certainty (Wilson), as far as these few can tell. None so far does not mean none. Counted for the whole scheme; with numbers like these an order of practices would be an order of chance.</p>
        </>
      )}
    </Sheet>
  );
}

function Line({ words, counted: { interval } }: { words: string; counted: Harm['harmed'] }) {
  return (
    <li>
      {words}
      {interval && ` (${perThousand(interval.lower)} to ${perThousand(interval.upper)} of 1,000)`}
    </li>
  );
}
