import { prices, type PracticeScreen } from '#libs/contracts/register';
import { NumberField } from '../../design/NumberField.js';
import { Sheet } from '../../design/Sheet.js';
import { money } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { MoneyField } from './MoneyField.js';
import { useAdd } from './queries.js';

export function PricesSheet({ screen, edits }: { screen: PracticeScreen; edits: boolean }) {
  const add = useAdd('/prices');
  const now = screen.prices;
  return (
    <Sheet title={t('Prices')}>
      <dl className="facts">
        <dt>{t('Sedation and watching')}</dt>
        <dd className="val">{money(now.sedationMinor, now.currency)}</dd>
        <dt>{t('Each radiograph')}</dt>
        <dd className="val">{money(now.radiographMinor, now.currency)}</dd>
        <dt>{t('Sending')}</dt>
        <dd className="val">{money(now.sendingMinor, now.currency)}</dd>
        <dt>{t('Tax on top')}</dt>
        <dd className="val">{now.taxPercent} %</dd>
      </dl>
      <p className="small quiet">{t('The fee of the reading centre is added from the centre’s row. A booking keeps the estimate that was read out.')}</p>
      {edits && (
        <AddForm opens={t('Change prices')} saves={t('Use these prices from now on')} schema={prices} add={add} start={now}>
          {(entry) => (
            <>
              <MoneyField label={t('Sedation and watching')} currency={now.currency} {...entry.field('sedationMinor')} />
              <MoneyField label={t('Each radiograph')} currency={now.currency} {...entry.field('radiographMinor')} />
              <MoneyField label={t('Sending')} currency={now.currency} {...entry.field('sendingMinor')} />
              <NumberField label={t('Tax on top')} unit="%" {...entry.field('taxPercent')} />
            </>
          )}
        </AddForm>
      )}
    </Sheet>
  );
}
