import type { OrderScreen } from '#libs/contracts/screens/order';
import { Sheet } from '../../../design/Sheet.js';
import { list, momentAt, plain } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { studyName } from '../next-actions.js';
import { Film } from './Film.js';
import { FilmSize } from './FilmSize.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { HERE, Told } from '../../../words/Told.js';

export function Films({ screen }: { screen: OrderScreen }) {
  if (screen.exposures.length === 0) return null;
  const nameOf = (study: string) => studyName(screen, study);
  return (
    <Sheet title={t('Films')} beside={t('{count, plural, one {# film} other {# films}}', { count: screen.exposures.length })}>
      {screen.studies.flatMap((s) => s.rejections.map((r) => <SentBack key={s.id + r.at} study={nameOf(s.id)} rejection={r} zone={screen.practice.zone} />))}
      <ul className="films">
        {screen.exposures.map((e) => (
          <li key={e.id} className={e.disowned ? 'film-disowned' : undefined}>
            <Film order={screen.id} exposure={e} zone={screen.practice.zone} />
            <div className="film-notes">
              {e.disowned && <p>{t('Taken out: it is not a film of this dog.')}</p>}
              {screen.studies.some((s) => s.rejections.some((r) => r.exposures.includes(e.id))) && (
                <p>
                  <Told text={t('**Sent back by the centre.** Kept with what the centre said.')} />
                </p>
              )}
              {e.verdicts.length === 0 && !e.disowned && <p>{t('Not judged yet.')}</p>}
              {e.verdicts.map((v) => (
                <p key={v.study}>
                  <Told text={v.verdict === 'accept' ? t('**Accepted** for {study}', { study: nameOf(v.study) }) : t('**Retake** for {study}', { study: nameOf(v.study) })} />
                  {v.reasons.length > 0 && `: ${v.reasons.join(', ')}`}
                </p>
              ))}
              {e.serves.length > 1 && <p>{t('Serves {studies}.', { studies: list(e.serves.map(nameOf)) })}</p>}
              {e.people.length > 0 ? <p>{t('In the room: {people}.', { people: list(e.people) })}</p> : !e.disowned && <p className="label">{t('Who was in the room is not written down yet.')}</p>}
              <FilmSize film={e} />
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
      <Told text={t('**{study}:** the centre sent back {views} of package {package}, {moment}: {reasons}', { study, views: list(r.views), package: HERE, moment: momentAt(r.at, zone), reasons: r.reasons.join(' ') })} here={<span className="num">{r.package}</span>} />
    </p>
  );
}

const units: Record<string, PageSentence> = { kv: '{value} kV', mas: '{value} mAs', distanceCm: '{value} cm', exposureIndex: 'exposure index {value}', deviationIndex: 'deviation index {value}' };
const technique = (shown: Record<string, unknown>) => Object.entries(units).flatMap(([key, words]) => (typeof shown[key] === 'number' ? [t(words, { value: plain(shown[key]) }).replaceAll(' ', '\u00a0')] : [])).join(', ');
