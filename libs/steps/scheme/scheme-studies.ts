import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { SchemeStudies, SchemeStudiesAsked } from '#libs/contracts/scheme-studies';
import { audit } from '#libs/platform/audit/audit';
import { stepName, studyNameNow } from '#libs/register/spoken-names';
import { t } from '#libs/words/spoken';
import type { StepDeps } from '../record/step-deps.js';
import type { Lead } from './scheme-screen.js';

const PAGE = 50;

interface Row extends Omit<SchemeStudies['rows'][number], 'study'> { protocol: string }

/** The studies behind a number of the scheme's page, those that have stood there longest first. */
export async function schemeStudies(deps: StepDeps, lead: Lead, { protocol, step, show, page }: SchemeStudiesAsked, perPage = PAGE): Promise<SchemeStudies> {
  const rows = await deps.db.outside(async (tx) => {
    await audit(tx, { by: lead.id, role: 'lead', action: 'viewScheme' });
    const [row] = await tx.$queryRaw<{ list: Row[] }[]>`
      SELECT app.scheme_studies(${lead.scheme}::uuid, ${protocol ?? null}::text, ${step ?? null}::text, ${show === 'unsent'}, ${(page - 1) * perPage}::int, ${perPage + 1}::int) AS list`;
    return row!.list;
  });
  const title = [protocol && studyNameNow(protocol), show === 'unsent' ? t('Imaged and not sent') : step && stepName(step)].filter(Boolean).join(': ') || t('All studies');
  return { title, more: rows.length > perPage, rows: rows.slice(0, perPage).map(({ protocol: code, ...r }) => ({ ...r, study: studyNameNow(code), step: stepName(r.step) })) };
}

/** The same list as a file for a spreadsheet. */
export async function schemeStudiesAsCsv(deps: StepDeps, lead: Lead, asked: SchemeStudiesAsked): Promise<string> {
  const { rows, more } = await schemeStudies(deps, lead, { ...asked, page: 1 }, MOST_ROWS);
  return csv(['Order', 'Study', 'Step', 'Since', 'Due', 'Practice', 'Centre'], rows.map((r) => [r.accession, r.study, r.step, r.since, r.dueDay, r.practice, r.centre]), more);
}
