import { createTransport } from 'nodemailer';
import { lineFault, PATIENCE_MS } from './line-fault.js';

export async function mailFault(url: string): Promise<string | undefined> {
  const transport = createTransport({ url, connectionTimeout: PATIENCE_MS, greetingTimeout: PATIENCE_MS, socketTimeout: PATIENCE_MS });
  try {
    await transport.verify();
    return undefined;
  } catch (error) {
    const { code, message } = error as Error & { code?: string };
    if (code === 'EAUTH' || code === 'ENOAUTH') return 'the mail server refuses the sign-in; check name and password.';
    if (code === 'ETLS') return 'no safe connection to the mail server came about; check its certificate, and smtps:// (port 465) against smtp:// (port 587).';
    return lineFault(error, 'mail server', url) ?? `the mail server cannot be used: ${message}.`;
  } finally {
    transport.close();
  }
}
