import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { Sheet } from '../../design/Sheet.js';
import { fullDay, languageName } from '../../design/format.js';
import { t } from '../../words/t.js';

/** Every label and value that is printed on the paper, in its order and language, and nobody's name: the owner is not on it. */
export function Printed({ check }: { check: CertificateCheck }) {
  return (
    <Sheet title={check.title} beside={t('issued {day} by {issuer}', { day: fullDay(check.issuedOn), issuer: check.issuer })} className={check.state === 'valid' ? '' : 'superseded'}>
      {check.language !== t.language && <p className="quiet">{t('The paper is written in {language}. Each line stands here as it is printed, and below it what it says.', { language: languageName(check.language) })}</p>}
      <dl className="cert-facts">
        {check.printed.map(({ label, value, said }, i) => (
          <div key={`${i} ${label}`}>
            <dt>
              <span lang={check.language}>{label}</span>
              {said && said.label !== label && <span className="block">{said.label}</span>}
            </dt>
            <dd>
              <span lang={check.language}>{value}</span>
              {said && said.value !== value && <span className="block said">{said.value}</span>}
            </dd>
          </div>
        ))}
      </dl>
      <h3>{t('What it does not tell')}</h3>
      <ul>
        {check.limits.map((limit) => (
          <li key={limit}>{limit}</li>
        ))}
      </ul>
    </Sheet>
  );
}
