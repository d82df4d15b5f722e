import { MailboxFrame } from './MailboxFrame.js';
import { t } from '../../words/t.js';

export const MailboxScreen = () => (
  <MailboxFrame>
    <p className="quiet">{t('Choose a message to read it.')}</p>
  </MailboxFrame>
);
