import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { SchemeScreen as Screen } from '#libs/contracts/screens/board';
import { get } from '../../api/client.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { dayAt, momentAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { HarmSheet } from './HarmSheet.js';
import { IncidentsSheet } from './IncidentsSheet.js';
import { NewPracticeSheet } from './NewPracticeSheet.js';
import { OverdueSheet } from './OverdueSheet.js';
import { PracticesSheet } from './PracticesSheet.js';
import { StepsSheet } from './StepsSheet.js';
import './scheme.css';

export function SchemeScreen() {
  const { zone } = useMe();
  const { data: screen, error } = useQuery({ queryKey: ['scheme'], queryFn: () => get<Screen>('/scheme'), refetchInterval: 60_000 });
  if (!screen) return error ? <ErrorBar error={error} /> : <Loading what={t('the scheme')} />;
  return (
    <>
      <div className="head">
        <h1>{screen.scheme}</h1>
        <p>{t('Counted {asOf}. No owner is named here, and no practice is set above another.', { asOf: momentAt(screen.asOf, zone) })}</p>
      </div>
      <nav className="more" aria-label={t('More of the scheme')}>
        <Link to="/scheme/breeds">{t('Breeds')}</Link>
        <Link to="/scheme/choosing">{t('Choosing a share to breed from')}</Link>
        <Link to="/scheme/readers">{t('Times and readers')}</Link>
        <Link to="/scheme/results-in">{t('Readings in')}</Link>
      </nav>
      <div className="scheme">
        <StepsSheet screen={screen} />
        <OverdueSheet screen={screen} />
        <IncidentsSheet screen={screen} />
        <HarmSheet harm={screen.harm} zone={zone} />
        <div className="scheme-pair">
          <PracticesSheet screen={screen} today={dayAt(screen.asOf, zone)} />
        </div>
        <NewPracticeSheet />
      </div>
    </>
  );
}
