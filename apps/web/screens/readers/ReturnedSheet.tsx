import type { SchemeTimes } from '#libs/contracts/readers';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';
import { Funnel } from './Funnel.js';
import { Quarters } from './Quarters.js';
import { Told } from '../../words/Told.js';

/** Sendings that came back, beside what chance alone would do. Not an order of practices. */
export function ReturnedSheet({ returned }: { returned: SchemeTimes['returned'] }) {
  if (!returned) {
    return (
      <Sheet title={t('Films that were sent back')}>
        <p>{t('Too few packages have been sent in any quarter to say anything: five are the least.')}</p>
      </Sheet>
    );
  }
  const { centre, quarters, practices, hidden } = returned;
  const beyond = practices.filter((p) => p.beyond).length;
  return (
    <Sheet title={t('Films that were sent back')} beside={t('packages of the last three years')}>
      <p className="said"><Told text={t('**{share} of every 100 packages** came back from the readers.', { share: Math.round(100 * centre) })} /></p>
      <section>
        <h3>{t('By quarter of sending')}</h3>
        <Quarters points={quarters} centre={centre} />
        <p className="small quiet">{t('Limits of three standard deviations around all together, whole packages where a quarter is small (NIST/SEMATECH e-Handbook 6.3.3.2).')}{hidden.quarters > 0 && ` ${t('{quarters, plural, one {# quarter with fewer than five packages is} other {# quarters with fewer than five packages are}} not shown.', { quarters: hidden.quarters })}`}</p>
      </section>
      <section>
        <h3>{t('By size of practice')}</h3>
        {practices.length === 0 ? (
          <p>{t('Fewer than five practices have sent five packages: each would be known, and so few cannot be told from chance.')}</p>
        ) : (
          <>
            <p>{beyond === 0
              ? t('One disc a practice, without its name. All lie within what chance alone would do. It is no ranking; none sent back at all is a question too.')
              : t('One disc a practice, without its name. {beyond, plural, one {# of {count} lies} other {# of {count} lie}} beyond chance. It is no ranking; none sent back at all is a question too.', { beyond, count: practices.length })}</p>
            <Funnel points={practices} centre={centre} />
            <p className="small quiet">{t('Limits of 95 of 100 (Spiegelhalter, Stat Med 2005;24:1185-1202), by whole packages where a practice sent few.')}{hidden.practices > 0 && ` ${t('{practices, plural, one {# practice with fewer than five packages is} other {# practices with fewer than five packages are}} not shown.', { practices: hidden.practices })}`}</p>
          </>
        )}
      </section>
    </Sheet>
  );
}
