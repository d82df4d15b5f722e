import type { OrderScreen } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { list, momentAt, plural } from '../../../design/format.js';
import { studyName } from '../next-actions.js';
import { Film } from './Film.js';

export function Films({ screen }: { screen: OrderScreen }) {
  if (screen.exposures.length === 0) return null;
  const nameOf = (study: string) => studyName(screen, study);
  return (
    <Sheet title="Films" beside={plural(screen.exposures.length, 'film', 'films')}>
      {screen.studies.flatMap((s) => s.rejections.map((r) => <SentBack key={s.id + r.at} study={nameOf(s.id)} rejection={r} zone={screen.practice.zone} />))}
      <ul className="films">
        {screen.exposures.map((e) => (
          <li key={e.id} className={e.disowned ? 'film-disowned' : undefined}>
            <Film order={screen.id} exposure={e} zone={screen.practice.zone} />
            <div className="film-notes">
              {e.disowned && <p>Taken out: it is not a film of this dog.</p>}
              {screen.studies.some((s) => s.rejections.some((r) => r.exposures.includes(e.id))) && (
                <p>
                  <b>Sent back by the centre.</b> Kept with what the centre said.
                </p>
              )}
              {e.verdicts.length === 0 && !e.disowned && <p>Not judged yet.</p>}
              {e.verdicts.map((v) => (
                <p key={v.study}>
                  <b>{v.verdict === 'accept' ? 'Accepted' : 'Retake'}</b> for {nameOf(v.study)}
                  {v.reasons.length > 0 && `: ${v.reasons.join(', ')}`}
                </p>
              ))}
              {e.serves.length > 1 && <p>Serves {list(e.serves.map(nameOf))}.</p>}
              {e.people.length > 0 && <p>In the room: {list(e.people)}.</p>}
              {technique(e.technique) && <p className="num">{technique(e.technique)}</p>}
            </div>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

type Rejection = OrderScreen['studies'][number]['rejections'][number];

function SentBack({ study, rejection: r, zone }: { study: string; rejection: Rejection; zone: string }) {
  return (
    <p>
      <b>{study}:</b> the centre sent back {list(r.views)} of package <span className="num">{r.package}</span>, {momentAt(r.at, zone)}: {r.reasons.join(' ')}
    </p>
  );
}

const units: [string, string, string][] = [
  ['kv', '', 'kV'],
  ['mas', '', 'mAs'],
  ['distanceCm', '', 'cm'],
  ['exposureIndex', 'exposure index', ''],
  ['deviationIndex', 'deviation index', ''],
];
const technique = (t: Record<string, unknown>) => units.flatMap(([key, before, unit]) => (t[key] === undefined || t[key] === null ? [] : [[before, String(t[key]), unit].filter(Boolean).join('\u00a0')])).join(', ');
