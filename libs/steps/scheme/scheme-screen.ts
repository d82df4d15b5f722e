import type { SchemeScreen } from '#libs/contracts/screens/board';
import { stepLabels } from '#libs/pathway/words';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { audit } from '#libs/platform/audit/audit';
import type { StepDeps } from '../record/step-deps.js';

export interface Lead { id: string; name: string; scheme: string }

/** Numbers and causes over all practices of a scheme; the database's door gives no owner and no dog's name. */
export async function schemeScreen(deps: StepDeps, lead: Lead): Promise<SchemeScreen> {
  const { overview, scheme } = await deps.db.outside(async (tx) => {
    await audit(tx, { by: lead.id, role: 'lead', action: 'viewScheme' });
    const [row] = await tx.$queryRaw<{ overview: Omit<SchemeScreen, 'scheme' | 'asOf'> }[]>`SELECT app.scheme_overview(${lead.scheme}::uuid) AS overview`;
    const named = await tx.scheme.findUniqueOrThrow({ where: { id: lead.scheme }, select: { name: true } });
    return { overview: row!.overview, scheme: named.name };
  });
  const name = (code: string) => currentProtocols().find((p) => p.code === code)?.deskName ?? code;
  return {
    scheme,
    asOf: deps.clock.now().toISOString(),
    ...overview,
    overdue: overview.overdue.map((o) => ({ ...o, study: name(o.study) })),
    steps: overview.steps.map((s) => ({ ...s, protocol: name(s.protocol), step: stepLabels[s.step as keyof typeof stepLabels] ?? s.step })),
    practices: overview.practices.map((p) => ({ ...p, accredited: p.accredited.map((a) => ({ ...a, protocol: name(a.protocol) })) })),
  };
}
