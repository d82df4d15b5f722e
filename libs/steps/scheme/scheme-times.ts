import type { SchemeTimes } from '#libs/contracts/readers';
import { funnel, pChart, type Share } from '#libs/science/agreement/control-limits';
import { kaplanMeier, timeUntil } from '#libs/science/agreement/kaplan-meier';
import { FEWEST } from '#libs/science/population/group-size';
import { wilson } from '#libs/science/population/wilson';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { audit } from '#libs/platform/audit/audit';
import type { StepDeps } from '../record/step-deps.js';
import type { Lead } from './scheme-screen.js';

interface Waited { protocol: string; days: number; answered: boolean }
interface Retaken { protocol: string; films: number; again: number; reasons: { reason: string; films: number }[] }
interface Sending extends Share { quarter: string; practice: number }

/** How long results take with the open studies in, and films that came back, beside the limits of chance. */
export async function schemeTimes(deps: StepDeps, lead: Lead): Promise<SchemeTimes> {
  const { waited, sendings, retaken } = await deps.db.outside(async (tx) => {
    await audit(tx, { by: lead.id, role: 'lead', action: 'viewScheme' });
    const [row] = await tx.$queryRaw<{ times: { waited: Waited[]; sendings: Sending[] } }[]>`SELECT app.scheme_times(${lead.scheme}::uuid) AS times`;
    const [films] = await tx.$queryRaw<{ retakes: Retaken[] }[]>`SELECT app.scheme_retakes(${lead.scheme}::uuid) AS retakes`;
    return { ...row!.times, retaken: films!.retakes };
  });
  const studies = currentProtocols().map((p) => ({ study: p.deskName, own: waited.filter((w) => w.protocol === p.code) }));
  return {
    asOf: deps.clock.now().toISOString(),
    studies: studies.filter(({ own }) => own.length > 0).map(({ study, own }) => ({ study, curve: curveOf(own) })),
    retakes: retakesOf(retaken),
    returned: returnedOf(sendings),
  };
}

function curveOf(waited: Waited[]): SchemeTimes['studies'][number]['curve'] {
  if (waited.length < FEWEST.toSayAnything) return null;
  const curve = kaplanMeier(waited.map(({ days, answered }) => ({ time: days, closed: answered })));
  const steps = curve.steps.map(({ time, open, mayBe }) => ({ day: time, open, mayBe }));
  return { n: curve.n, stillOpen: curve.stillOpen, steps, openAt: curve.openAt, half: timeUntil(curve, 0.5) };
}

/** Below five films there is no share, and a reason is named from five films on. */
function retakesOf(retaken: Retaken[]): SchemeTimes['retakes'] {
  return currentProtocols().flatMap(({ code, deskName }) => {
    const own = retaken.find((r) => r.protocol === code);
    if (!own) return [];
    const { films, again, reasons } = own;
    const enough = films >= FEWEST.toSayAnything;
    return [{ study: deskName, films, again, mayBe: enough ? wilson(again, films) : null, reasons: again >= FEWEST.toSayAnything ? reasons : [] }];
  });
}

function returnedOf(sendings: Sending[]): SchemeTimes['returned'] {
  const units = (by: (s: Sending) => string) => [...new Set(sendings.map(by))].map((key) => ({ key, ...added(sendings.filter((s) => by(s) === key)) }));
  const enough = ({ of }: Share) => of >= FEWEST.toSayAnything;
  const [quarters, practices] = [units((s) => s.quarter), units((s) => String(s.practice))];
  const shown = { quarters: quarters.filter(enough).sort((a, b) => (a.key < b.key ? -1 : 1)), practices: practices.filter(enough).sort((a, b) => a.of - b.of || a.cases - b.cases) };
  if (shown.quarters.length === 0) return null;
  const overTime = pChart(shown.quarters);
  return {
    centre: overTime.centre,
    quarters: overTime.points.map((point, i) => ({ ...point, quarter: shown.quarters[i]!.key })),
    // Of a few practices each would be known.
    practices: shown.practices.length < FEWEST.toSayAnything ? [] : funnel(shown.practices, 0.95).points,
    hidden: { quarters: quarters.length - shown.quarters.length, practices: practices.length - shown.practices.length },
  };
}

const added = (rows: Sending[]): Share => ({ cases: rows.reduce((sum, { cases }) => sum + cases, 0), of: rows.reduce((sum, { of }) => sum + of, 0) });
