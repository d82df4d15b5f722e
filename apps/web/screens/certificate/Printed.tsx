import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { Sheet } from '../../design/Sheet.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';

/** Every label and value that is printed on the paper, in its order, and nobody's name: the owner is not on it. */
export function Printed({ check }: { check: CertificateCheck }) {
  return (
    <Sheet title={check.title} beside={t('issued {day} by {issuer}', { day: fullDay(check.issuedOn), issuer: check.issuer })} className={check.state === 'valid' ? '' : 'superseded'}>
      <dl className="cert-facts">
        {check.printed.map(({ label, value }, i) => (
          <div key={`${i} ${label}`}>
            <dt>{label}</dt>
            <dd>{value}</dd>
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
