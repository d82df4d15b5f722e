import type { Webhooks } from '#libs/contracts/integrations';
import type { LineAnswer } from '#libs/contracts/line';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { t } from '../../words/t.js';

const common: Record<LineAnswer, PageSentence> = {
  taken: 'It was taken ({status}).',
  reached: '{host} is reached, lets us in and answers. Nothing of a dog was sent.',
  refused: '{host} is reached, and refuses the name, password or key ({status}). Ask there for the right ones, and enter them anew.',
  noService: '{host} is reached, and knows no such service at this address ({status}). Ask there for the exact address.',
  gone: '{host} says that nothing is wanted there any more ({status}). Ask there, or end it.',
  busy: '{host} is reached, and is busy or broken ({status}). Try again later; if it stays so, tell whoever runs it.',
  unexpected: '{host} is reached, and answers what was not expected ({status}). Ask there what that means.',
  nameNotFound: 'The name {host} is not found. Look at its spelling; if it is right, ask whoever runs this server whether names are found here.',
  certificate: '{host} is reached, and its certificate is not trusted ({detail}). Nothing was sent. Whoever runs it renews or repairs the certificate.',
  inside: '{host} leads into this server’s own network, where nothing is called. Enter an address in the open internet; if it is meant so, whoever runs this server names it in OUTGOING_ALLOW.',
  redirect: '{host} sends callers on to another address, which is not followed. Enter the address that it leads to.',
  clear: '{host} would be called in the clear. Enter an address that begins with https://.',
  noAddress: 'This is no address that can be called. Enter one that begins with https:// and names a host.',
  nobodyListens: '{host} is found, and nobody listens there. Look at the port in the address; if it is right, ask whether the service is running.',
  noAnswer: '{host} did not answer in time. Try again later; if it stays so, ask whether a firewall keeps this server out.',
  secretLost: 'The password or secret cannot be read on this server any more, and nothing was sent. Enter it anew, or make a new one.',
  broken: 'The line to {host} broke ({detail}). Try again; if it stays so, tell whoever runs it.',
};

/** A bucket can be looked into without being written to; the rest shows with the first film. */
const inStore: Partial<Record<LineAnswer, PageSentence>> = {
  reached: '{host} is reached, and the key lets us look into the bucket. Nothing was stored there: whether films may be stored is known when the first one goes.',
  refused: '{host} is reached, and refuses the key, or lets it not look into the bucket ({status}). Ask there for a key that may store and look, and enter it anew.',
};

export interface Heard { answer: LineAnswer; status: number | null; detail: string | null }

/** What came of a call, and what to do next. */
export function lineWords({ answer, status, detail }: Heard, address: string, kind?: string): string {
  const sentence = (kind === 'objectStore' ? inStore[answer] : undefined) ?? common[answer];
  return t(sentence, { host: new URL(address).host, status: status ?? '', detail: detail ?? t('no reason given') });
}

/** One try of a call in its log: what was written down by its name is said in the reader's language, the rest as it was written. */
export const tryWords = ({ words, answer, status, detail }: Webhooks['deliveries'][number]['tries'][number], address: string | undefined): string =>
  (answer && address ? lineWords({ answer, status, detail }, address) : t.known(words));
