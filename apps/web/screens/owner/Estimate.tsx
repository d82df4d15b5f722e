import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { amount, money } from '../../design/format.js';
import { useWords } from '../../words/Speak.js';
import { HERE, Told } from '../../words/Told.js';
import { useTellEstimate } from './queries.js';

export function Estimate({ page, first }: { page: OwnerPage; first: boolean }) {
  const t = useWords();
  const tell = useTellEstimate();
  const { estimate, visit, practice } = page;
  if (!estimate) return null;
  return (
    <section aria-labelledby="price" id="estimate">
      <h2 id="price">{t('What it costs')}</h2>
      <table className="tbl bill">
        <caption className="vh">{t('Estimate in {currency}', { currency: estimate.currency })}</caption>
        <tbody>
          {estimate.lines.map((line) => (
            <tr key={line.words}>
              <th scope="row">{line.words}</th>
              <td className="r">{amount(line.amountMinor, t.language)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{t('Together')}</th>
            <td className="r val">{money(estimate.totalMinor, estimate.currency, t.language)}</td>
          </tr>
        </tfoot>
      </table>
      {estimate.accepted ? (
        <p>{t('You said yes to this estimate.')}</p>
      ) : (
        <>
          <p>
            <Told
              text={t('If something else turns out to be needed, we ask you first. Is it too much, or not clear? Phone us on {phone}.', { phone: HERE })}
              here={<a href={`tel:${practice.phone.replace(/\s/g, '')}`}>{practice.phone}</a>}
            />
          </p>
          <ErrorBar error={tell.error} />
          {visit && (
            <Button kind={first ? 'elder' : 'plain'} onPress={() => tell.mutate({ visit: visit.id, totalMinor: estimate.totalMinor })}>
              {t('I accept {money}', { money: money(estimate.totalMinor, estimate.currency, t.language) })}
            </Button>
          )}
        </>
      )}
    </section>
  );
}
