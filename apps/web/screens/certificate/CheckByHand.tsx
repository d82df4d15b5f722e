import { useQuery } from '@tanstack/react-query';
import { get } from '../../api/client.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { t } from '../../words/t.js';

interface PublicKey { pem: string; algorithm: string }

export function CheckByHand() {
  const { data: key, error } = useQuery({ queryKey: ['public-key'], queryFn: () => get<PublicKey>('/certificates/public-key'), staleTime: Infinity });
  return (
    <Sheet title={t('Checking a paper without this server')}>
      <p>
        {t('The square code on the paper holds the facts themselves and a signature over them{algorithm}. Whoever keeps the public key below can check the two against each other without a network: if one letter was changed, they no longer fit. What the code cannot say is whether the paper was amended or withdrawn later; only this page can.', { algorithm: key ? ` (${key.algorithm})` : '' })}
      </p>
      <ErrorBar error={error} />
      {key && (
        <>
          <pre className="pem" tabIndex={0} aria-label={t('Public key')}>{key.pem.trim()}</pre>
          <p>
            <a href={`data:application/x-pem-file,${encodeURIComponent(key.pem)}`} download="public-key.pem">
              {t('Keep the key as a file')}
            </a>
          </p>
        </>
      )}
    </Sheet>
  );
}
