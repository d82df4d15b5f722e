import { lookup as lookUpName, type LookupAddress } from 'node:dns';
import { isIP } from 'node:net';
import { Agent, fetch, type RequestInit, type Response } from 'undici';
import { said } from '#libs/words/said';
import { AddressRefusedError } from './address-refused-error.js';
import { inTheWorld } from './in-the-world.js';

/** The addresses of a host, as the network's name service gives them. */
export type LookUp = (host: string, done: (error: Error | null, found: LookupAddress[]) => void) => void;
const lookUpAll: LookUp = (host, done) => lookUpName(host, { all: true }, done);

const PATIENCE = { headersTimeout: 120_000, bodyTimeout: 120_000 };
const CONNECT_MS = 10_000;

/**
 * Calls addresses that people entered, and none inside our own network: a name is looked up when the line is made, the line goes to the very
 * address that was judged, and a redirect is never followed.
 */
export class Outgoing {
  readonly #allow: ReadonlySet<string>;
  readonly #lookUp: LookUp;
  readonly #guarded: Agent;
  readonly #plain = new Agent({ ...PATIENCE, connect: { timeout: CONNECT_MS } });

  constructor(settings: { outgoing: { allow: readonly string[] } }, lookUp: LookUp = lookUpAll) {
    this.#allow = new Set(settings.outgoing.allow);
    this.#lookUp = lookUp;
    this.#guarded = new Agent({
      ...PATIENCE,
      connect: {
        timeout: CONNECT_MS,
        lookup: (host, { all }, done) => {
          this.#judgedLookUp(host).then(
            (found) => (all ? done(null, found) : done(null, found[0]!.address, found[0]!.family)),
            (error: Error) => done(error, []),
          );
        },
      },
    });
  }

  /** Throws AddressRefusedError for an address that would not be called; asked when a person enters one. */
  async check(address: string): Promise<void> {
    const { hostname, allowed } = this.#judge(address);
    if (allowed || isIP(hostname)) return;
    await this.#judgedLookUp(hostname).catch((error: Error) => {
      throw error instanceof AddressRefusedError ? error : new AddressRefusedError(said('The host {host} is not known. Check the spelling.', { host: hostname }), 'nameNotFound');
    });
  }

  async fetch(address: string, init: RequestInit = {}): Promise<Response> {
    const { url, allowed } = this.#judge(address);
    const answer = await fetch(url, { ...init, redirect: 'manual', dispatcher: allowed ? this.#plain : this.#guarded }).catch((error: unknown) => {
      throw refusalIn(error) ?? error;
    });
    if (answer.status < 300 || answer.status > 399) return answer;
    await answer.body?.cancel();
    throw new AddressRefusedError(said('{host} sends callers on to another address, which is not followed. Enter the address that it leads to.', { host: url.host }), 'redirect');
  }

  async close(): Promise<void> {
    await Promise.all([this.#guarded.close(), this.#plain.close()]);
  }

  #judge(address: string): { url: URL; hostname: string; allowed: boolean } {
    const url = URL.canParse(address) ? new URL(address) : undefined;
    if (!url || !/^https?:$/.test(url.protocol)) throw new AddressRefusedError(said('This is no web address; it begins with https:// and names a host.'), 'noAddress');
    if (url.username || url.password) throw new AddressRefusedError(said('An address holds no name and no password; they have fields of their own.'), 'noAddress');
    const hostname = url.hostname.replace(/^\[|\]$/g, '');
    const allowed = this.#allow.has(hostAndPort(url));
    if (allowed) return { url, hostname, allowed };
    if (url.protocol !== 'https:') throw new AddressRefusedError(said('{host} would be called in the clear; the address must begin with https://.', { host: url.host }), 'clear');
    if (isIP(hostname)) refuseOwn(hostname, [{ address: hostname }]); // an address that is written out is never looked up
    return { url, hostname, allowed };
  }

  #judgedLookUp(host: string): Promise<LookupAddress[]> {
    return new Promise((resolve, reject) => {
      this.#lookUp(host, (error, found) => {
        if (error) return reject(error);
        try {
          resolve(refuseOwn(host, found));
        } catch (refused) {
          reject(refused as AddressRefusedError);
        }
      });
    });
  }
}

/** The way in which OUTGOING_ALLOW names a place, with the port that the address leaves out. */
const hostAndPort = ({ hostname, port, protocol }: URL) => `${hostname}:${port || (protocol === 'https:' ? '443' : '80')}`;

/** One address inside is enough: the next line could go there. */
function refuseOwn<T extends { address: string }>(host: string, found: T[]): T[] {
  if (found.length > 0 && found.every(({ address }) => inTheWorld(address))) return found;
  throw new AddressRefusedError(said('{host} leads into the server’s own network, where nothing is called. If that is meant, whoever runs the server names it in OUTGOING_ALLOW.', { host }), 'inside');
}

/** What the client wraps in errors of its own. */
function refusalIn(error: unknown): AddressRefusedError | undefined {
  if (error instanceof AddressRefusedError) return error;
  if (!(error instanceof Error)) return undefined;
  const inner = error instanceof AggregateError ? error.errors : [error.cause];
  return inner.map(refusalIn).find((found) => found !== undefined);
}
