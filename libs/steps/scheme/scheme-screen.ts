import type { SchemeScreen } from '#libs/contracts/screens/board';
import { wilson } from '#libs/science/population/wilson';
import { audit } from '#libs/platform/audit/audit';
import { stepName, studyNameNow } from '#libs/register/spoken-names';
import { t } from '#libs/words/spoken';
import { incidentWords, type IncidentKind } from '../incident/open-incident.js';
import type { StepDeps } from '../record/step-deps.js';

export interface Lead { id: string; name: string; scheme: string }

interface HarmCounts { sedated: number; since: string | null; diedInCare: number; harmed: number }

type IncidentRow = Omit<SchemeScreen['incidents'][number], 'what'> & { kind: IncidentKind };

const counted = (count: number, among: number) => ({ count, interval: among > 0 ? wilson(Math.min(count, among), among) : null });

/** Numbers and causes over all practices of a scheme; the database's door gives no owner and no dog's name. */
export async function schemeScreen(deps: StepDeps, lead: Lead): Promise<SchemeScreen> {
  const { overview, scheme, harm, incidents } = await deps.db.outside(async (tx) => {
    await audit(tx, { by: lead.id, role: 'lead', action: 'viewScheme' });
    const [row] = await tx.$queryRaw<{ overview: Omit<SchemeScreen, 'scheme' | 'asOf' | 'harm' | 'incidents'> }[]>`SELECT app.scheme_overview(${lead.scheme}::uuid) AS overview`;
    const [counts] = await tx.$queryRaw<{ harm: HarmCounts }[]>`SELECT app.scheme_harm(${lead.scheme}::uuid) AS harm`;
    const [opened] = await tx.$queryRaw<{ incidents: IncidentRow[] }[]>`SELECT app.scheme_incidents(${lead.scheme}::uuid) AS incidents`;
    const named = await tx.scheme.findUniqueOrThrow({ where: { id: lead.scheme }, select: { name: true } });
    return { overview: row!.overview, scheme: named.name, harm: counts!.harm, incidents: opened!.incidents };
  });
  return {
    scheme,
    asOf: deps.clock.now().toISOString(),
    ...overview,
    harm: { sedated: harm.sedated, since: harm.since, diedInCare: counted(harm.diedInCare, harm.sedated), harmed: counted(harm.harmed, harm.sedated) },
    incidents: incidents.map(({ kind, ...i }) => ({ ...i, study: studyNameNow(i.study), what: t.known(incidentWords[kind]) })),
    overdue: overview.overdue.map((o) => ({ ...o, study: studyNameNow(o.study) })),
    steps: overview.steps.map((s) => ({ ...s, code: s.protocol, at: s.step, protocol: studyNameNow(s.protocol), step: stepName(s.step) })),
    practices: overview.practices.map((p) => ({ ...p, accredited: p.accredited.map((a) => ({ ...a, protocol: studyNameNow(a.protocol) })) })),
  };
}
