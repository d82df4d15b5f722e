import { said } from '#libs/words/said';
import { AddressRefusedError } from './address-refused-error.js';
import { lineFault } from './line-fault.js';

const failed = (cause: unknown) => new TypeError('fetch failed', { cause });
const coded = (code: string) => Object.assign(new Error(code), { code });

describe('what a line broke on', () => {
  it.each([
    ['nameNotFound', coded('ENOTFOUND')],
    ['certificate', coded('CERT_HAS_EXPIRED')],
    ['certificate', coded('DEPTH_ZERO_SELF_SIGNED_CERT')],
    ['certificate', coded('ERR_TLS_CERT_ALTNAME_INVALID')],
    ['nobodyListens', new AggregateError([coded('ECONNREFUSED')])],
    ['noAnswer', coded('UND_ERR_CONNECT_TIMEOUT')],
    ['broken', coded('ECONNRESET')],
    ['broken', undefined],
  ])('is told apart: %s', (fault, cause) => {
    expect(lineFault(failed(cause)).fault).toBe(fault);
  });

  it('is named by the client where the network has no word for it', () => {
    expect(lineFault(failed(new Error('bad port')))).toEqual({ fault: 'broken', detail: 'bad port' });
  });

  it('is no answer when nobody waited longer, and the reason of whoever refused the address', () => {
    expect(lineFault(new DOMException('The operation timed out.', 'TimeoutError')).fault).toBe('noAnswer');
    expect(lineFault(new AddressRefusedError(said('This is no web address; it begins with https:// and names a host.'), 'inside')).fault).toBe('inside');
  });
});
