import net from 'node:net';
import { SMTPServer, type SMTPServerOptions } from 'smtp-server';
import { CaptureServer, type CapturedMail } from './capture-server.js';
import { messageIdOf, type OutgoingMail } from './mailer.js';
import { NotSentError } from './not-sent-error.js';
import { SmtpMailer } from './smtp-mailer.js';

const from = 'Hafenstrand Practice <desk@hafenstrand.example>';
const mail: OutgoingMail = {
  messageId: messageIdOf('0198c2e0-5d3f', 'cotyla.example'),
  to: 'ona.veld@mail.example',
  subject: 'Appointment for Brisa',
  text: 'Good morning,\nBrisa is expected on Tuesday.',
  html: '<p>Good morning, Brisa is expected on Tuesday.</p>',
};

const closing: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0)) await close();
});

async function capture(store: (mail: CapturedMail) => Promise<void>, maxBytes?: number) {
  const errors: Error[] = [];
  const server = new CaptureServer({ store, onError: (error) => errors.push(error), maxBytes });
  const url = await server.start();
  closing.push(() => server.close());
  return { mailer: new SmtpMailer({ url, from }), errors };
}

async function serverThat(options: SMTPServerOptions, signIn = ''): Promise<SmtpMailer> {
  const server = new SMTPServer({ authOptional: true, disabledCommands: ['STARTTLS'], disableReverseLookup: true, ...options });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  server.on('error', () => {}); // lines cut on purpose
  closing.push(() => new Promise((resolve) => server.close(resolve)));
  return new SmtpMailer({ url: `smtp://${signIn}127.0.0.1:${(server.server.address() as net.AddressInfo).port}`, from });
}

const refusal = (responseCode: number, message: string) => Object.assign(new Error(message), { responseCode });

describe('mail caught by the server inside the program', () => {
  it('arrives whole: both texts, the attachment and the invitation', async () => {
    const kept: CapturedMail[] = [];
    const { mailer } = await capture(async (caught) => void kept.push(caught));
    const letter = Buffer.from('%PDF-1.7 öäü');
    const calendar = 'BEGIN:VCALENDAR\r\nMETHOD:REQUEST\r\nEND:VCALENDAR\r\n';
    const outcome = await mailer.send({
      ...mail,
      attachments: [{ filename: 'letter.pdf', contentType: 'application/pdf', content: letter }],
      calendar: { method: 'REQUEST', content: calendar },
    });
    expect(outcome).toMatchObject({ outcome: 'delivered', detail: expect.stringContaining('250') });
    expect(kept).toHaveLength(1);
    expect(kept[0]).toMatchObject({ messageId: mail.messageId, from: 'desk@hafenstrand.example', to: [mail.to], subject: mail.subject, html: mail.html });
    expect(kept[0]?.text.trim()).toBe(mail.text);
    expect(kept[0]?.raw.toString()).toContain('Auto-Submitted: auto-generated');
    expect(kept[0]?.attachments.find((a) => a.filename === 'letter.pdf')?.content).toEqual(letter);
    expect(kept[0]?.attachments.filter((a) => a.filename === 'invitation.ics')).toHaveLength(1);
    expect(kept[0]?.raw.toString()).toMatch(/Content-Type: text\/calendar;[^]*method=REQUEST/);
  });

  it('is not said to be delivered when it could not be kept', async () => {
    const { mailer, errors } = await capture(async () => {
      throw new Error('the database is away');
    });
    await expect(mailer.send(mail)).rejects.toThrow(NotSentError);
    expect(errors).toHaveLength(1);
  });

  it('is refused when it is too large', async () => {
    const { mailer } = await capture(async () => {}, 2000);
    expect(await mailer.send({ ...mail, text: 'x'.repeat(5000) })).toMatchObject({ outcome: 'bounced' });
  });
});

describe('what a mail server does becomes an outcome', () => {
  it('550 to the addressee: bounced, with the words of the server', async () => {
    const mailer = await serverThat({ onRcptTo: (_, __, answer) => answer(refusal(550, 'no such person here')) });
    expect(await mailer.send(mail)).toEqual({ outcome: 'bounced', detail: expect.stringContaining('no such person here') });
  });

  it('554 after the mail was handed over: bounced', async () => {
    const mailer = await serverThat({
      onData: (stream, _, answer) => stream.resume().on('end', () => answer(refusal(554, 'looks like spam'))),
    });
    expect(await mailer.send(mail)).toEqual({ outcome: 'bounced', detail: expect.stringContaining('looks like spam') });
  });

  it.each(['onMailFrom', 'onRcptTo'] as const)('451 at %s: nothing was sent, try later', async (step) => {
    const mailer = await serverThat({ [step]: (_: unknown, __: unknown, answer: (error: Error) => void) => answer(refusal(451, 'come back later')) });
    await expect(mailer.send(mail)).rejects.toThrow(/come back later/);
    await expect(mailer.send(mail)).rejects.toThrow(NotSentError);
  });

  it('451 after the mail was handed over: the server has not taken it, try later', async () => {
    const mailer = await serverThat({ onData: (stream, _, answer) => stream.resume().on('end', () => answer(refusal(451, 'disk full'))) });
    await expect(mailer.send(mail)).rejects.toThrow(NotSentError);
  });

  it('a refused sign-in is a fault of the settings, not a bounce', async () => {
    const refusing: SMTPServerOptions = { authOptional: false, allowInsecureAuth: true, onAuth: (_, __, answer) => answer(refusal(535, 'wrong password')) };
    await expect((await serverThat(refusing, 'desk:word@')).send(mail)).rejects.toThrow(/wrong password/);
    await expect((await serverThat({ onMailFrom: (_, __, answer) => answer(refusal(530, 'sign in first')) })).send(mail)).rejects.toThrow(NotSentError);
  });

  it('nobody answers: nothing was sent, try later', async () => {
    const mailer = new SmtpMailer({ url: 'smtp://127.0.0.1:1', from });
    await expect(mailer.send(mail)).rejects.toThrow(NotSentError);
  });

  it('the line is cut before the mail: nothing was sent, try later', async () => {
    const mailer = await lineCutAfter('MAIL FROM');
    await expect(mailer.send(mail)).rejects.toThrow(NotSentError);
  });

  it('the line is cut after DATA and before the mail is through: unknown', async () => {
    const mailer = await lineCutAfter('DATA');
    expect(await mailer.send(mail)).toMatchObject({ outcome: 'unknown' });
  });

  it('the line is cut when the mail was through, before the answer: unknown', async () => {
    const mailer = await lineCutAfter('.');
    expect(await mailer.send(mail)).toMatchObject({ outcome: 'unknown' });
  });
});

it('a Message-ID takes no signs that could end the header', () => {
  expect(() => messageIdOf('a>\r\nBcc: x', 'cotyla.example')).toThrow(RangeError);
});

/** A mail server by hand: it answers every line and hangs up when it has read the given one. */
async function lineCutAfter(last: string): Promise<SmtpMailer> {
  const server = net.createServer((socket) => {
    let inMail = false;
    socket.on('error', () => {}); // the other end may hang up first
    socket.write('220 here\r\n');
    socket.on('data', (chunk) => {
      for (const line of chunk.toString().split('\r\n').filter(Boolean)) {
        if (line === 'DATA') {
          inMail = true;
          socket.write('354 go on\r\n');
          if (last === 'DATA') socket.end();
        } else if (line.startsWith(last)) socket.destroy();
        else if (!inMail) socket.write('250 yes\r\n');
      }
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  closing.push(() => new Promise((resolve) => server.close(() => resolve())));
  return new SmtpMailer({ url: `smtp://127.0.0.1:${(server.address() as net.AddressInfo).port}`, from });
}
