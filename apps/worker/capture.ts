import { CaptureServer, type CapturedMail } from '#libs/platform/mail/capture-server';
import type { Db } from '#libs/platform/database/db';

/** Where no mail server is set, a real one inside the program keeps every mail for the mailbox page. */
export async function startCapture(db: Db, onError: (error: Error) => void): Promise<{ url: string; close: () => Promise<void> }> {
  const server = new CaptureServer({ onError, store: (mail) => keepCaught(db, mail) });
  return { url: await server.start(), close: () => server.close() };
}

export function keepCaught(db: Db, mail: CapturedMail): Promise<void> {
  return db.system('keep a caught mail', async (tx) => {
    const id = /^<?([0-9a-f-]{36})@/.exec(mail.messageId)?.[1] ?? null;
    // An invitation comes twice: as a part of the mail, which has no name, and as a file.
    const files = mail.attachments.filter((a) => a.filename || a.contentType !== 'text/calendar').map((a) => ({ name: a.filename || 'file', type: a.contentType, size: a.content.length, content: a.content.toString('base64') }));
    await tx.$executeRaw`INSERT INTO captured_mail (message_id, practice_id, "from", "to", subject, text, html, files, raw)
      VALUES (${mail.messageId}, (SELECT practice_id FROM message WHERE id = ${id}::uuid), ${mail.from}, ${mail.to.join(', ')}, ${mail.subject}, ${mail.text}, ${mail.html || null}, ${JSON.stringify(files)}::jsonb, ${mail.raw})`;
  });
}
