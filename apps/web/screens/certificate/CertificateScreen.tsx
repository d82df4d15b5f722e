import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { get } from '../../api/client.js';
import { isFailure } from '../../api/failure.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Brand } from '../../shell/Brand.js';
import { t } from '../../words/t.js';
import { CheckByHand } from './CheckByHand.js';
import { Printed } from './Printed.js';
import './certificate.css';
import type { PageSentence } from '#libs/words/de/staff/page-words';

export function CertificateScreen() {
  const { serial } = useParams({ from: '/c/$serial' });
  const { data: check, error } = useQuery({ queryKey: ['certificate', serial], queryFn: () => get<CertificateCheck>(`/certificates/${encodeURIComponent(serial)}`) });
  return (
    <>
      <header>
        <div className="strip">
          <Brand house={t('check of a paper')} />
        </div>
      </header>
      <main id="main" className="cert">
        {check ? (
          <>
            <Standing check={check} />
            <Printed check={check} />
          </>
        ) : isFailure(error) && error.status === 404 ? (
          <section className="sheet" aria-labelledby="standing">
            <h1 id="standing">{t('No paper has the number {number}.', { number: serial })}</h1>
            <p className="lead">{t('Compare it with the paper, sign by sign. If it is the same, this server did not issue that paper: ask the practice or the reading centre named on it.')}</p>
          </section>
        ) : error ? (
          <ErrorBar error={error} />
        ) : (
          <Loading what={t('the paper')} />
        )}
        <CheckByHand />
      </main>
    </>
  );
}

const standing: Record<CertificateCheck['state'], PageSentence> = { valid: 'It still stands.', amended: 'A newer one has taken its place.', withdrawn: 'It has been withdrawn.' };

function Standing({ check }: { check: CertificateCheck }) {
  return (
    <section className="sheet" aria-labelledby="standing">
      <p className="num quiet">{check.serial}</p>
      <h1 id="standing">{t(standing[check.state])}</h1>
      <p className="lead">{check.says}</p>
      {check.replacedBy && (
        <p className="lead">
          <Link to="/c/$serial" params={{ serial: check.replacedBy }}>
            {t('Look at the one that stands, {number}', { number: check.replacedBy })}
          </Link>
        </p>
      )}
      <p>{t('If one line below differs from the paper, the paper was changed.')}</p>
    </section>
  );
}
