import { MailboxFrame } from './MailboxFrame.js';

export const MailboxScreen = () => (
  <MailboxFrame>
    <p className="quiet">Choose a message to read it.</p>
  </MailboxFrame>
);
