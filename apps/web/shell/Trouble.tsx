import type { ErrorComponentProps } from '@tanstack/react-router';
import { Link } from '@tanstack/react-router';
import { ErrorBar } from '../design/Notice.js';
import { t } from '../words/t.js';

export const Trouble = ({ error }: ErrorComponentProps) => (
  <main className="bare">
    <h1 className="vh">{t('Trouble')}</h1>
    <ErrorBar error={error} />
  </main>
);

export const NoSuchPage = () => (
  <main className="bare stack">
    <h1>{t('There is no page here')}</h1>
    <p>{t('The address may have been cut off. Links in mails must be copied whole.')}</p>
    <p>
      <Link to="/" className="btn">
        {t('Go to today')}
      </Link>
    </p>
  </main>
);
