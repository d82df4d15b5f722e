import { useQuery } from '@tanstack/react-query';
import type { SchemeScreen as Screen } from '#libs/contracts/screens/board';
import { get } from '../../api/client.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { dayAt, momentAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
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
  if (!screen) return error ? <ErrorBar error={error} /> : <Loading what="the scheme" />;
  return (
    <>
      <div className="head">
        <h1>{screen.scheme}</h1>
        <p>Counted {momentAt(screen.asOf, zone)}. No owner is named here, and no practice is set above another.</p>
      </div>
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
