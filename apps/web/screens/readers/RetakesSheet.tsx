import type { SchemeTimes } from '#libs/contracts/readers';
import { Sheet } from '../../design/Sheet.js';
import { fixed, list } from '../../design/format.js';
import { t } from '../../words/t.js';
import { Told } from '../../words/Told.js';

/** Films that were taken again while the dog slept, over the whole scheme. */
export function RetakesSheet({ retakes }: { retakes: SchemeTimes['retakes'] }) {
  return (
    <Sheet title={t('Films that were taken again')} beside={t('of those that somebody judged in the last three years')}>
      {retakes.length === 0 && <p>{t('No film has been judged yet.')}</p>}
      {retakes.map(({ study, films, again, mayBe, reasons }) => (
        <section key={study}>
          <h3>{study}</h3>
          {mayBe ? (
            <p>
              <Told text={t('**{again} of {films, plural, one {# film} other {# films}}**, which may be {lower} to {upper} of every 100 (Wilson, 95 %).', { again, films, lower: percent(mayBe.lower), upper: percent(mayBe.upper) })} />
              {reasons.length > 0 && ` ${t('Why: {reasons}.', { reasons: list(reasons.map((r) => `${t.known(r.reason)} (${r.films})`)) })}`}
            </p>
          ) : (
            <p>{t('Fewer than five films have been judged: too few to say anything.')}</p>
          )}
        </section>
      ))}
      <p className="small quiet">{t('Many retakes keep dogs asleep longer; none at all may mean that nobody looks closely. No practice is told apart here.')}</p>
    </Sheet>
  );
}

const percent = (share: number) => fixed(100 * share, 1);
