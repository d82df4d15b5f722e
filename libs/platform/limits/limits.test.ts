import { LIMITS, Limits, TooManyTriesError } from './limits.js';
import { networkOf } from './network-of.js';

const HOME = '192.0.2.7'; // addresses for documentation, RFC 5737 and RFC 3849

async function times(count: number, act: () => Promise<void>): Promise<void> {
  for (let i = 0; i < count; i++) await act();
}

describe('the limit of tries to sign in', () => {
  it('refuses after the allowed number and says how long to wait', async () => {
    const limits = new Limits();
    await times(LIMITS.signIn.points, () => limits.trySignIn(HOME, 'ona'));
    const refused = await limits.trySignIn(HOME, 'ona').catch((error: TooManyTriesError) => error);
    if (!(refused instanceof TooManyTriesError)) throw new Error('it was not refused');
    expect(refused.retryAfterSeconds).toBeGreaterThan(0);
    expect(refused.retryAfterSeconds).toBeLessThanOrEqual(LIMITS.signIn.duration);
  });

  it('keeps nobody else out: another name, or the same name from elsewhere', async () => {
    const limits = new Limits();
    await times(LIMITS.signIn.points, () => limits.trySignIn(HOME, 'ona'));
    await expect(limits.trySignIn(HOME, 'tiber')).resolves.toBeUndefined();
    await expect(limits.trySignIn('192.0.2.8', 'ona')).resolves.toBeUndefined();
  });

  it('is not got round by writing the name otherwise', async () => {
    const limits = new Limits();
    await times(LIMITS.signIn.points, () => limits.trySignIn(HOME, 'ona'));
    await expect(limits.trySignIn(HOME, ' ONA ')).rejects.toThrow(TooManyTriesError);
  });

  it('begins anew after a right password', async () => {
    const limits = new Limits();
    await times(LIMITS.signIn.points, () => limits.trySignIn(HOME, 'ona'));
    await limits.signedIn(HOME, 'ona');
    await expect(limits.trySignIn(HOME, 'ona')).resolves.toBeUndefined();
  });

  it('refuses one address that tries many names', async () => {
    const limits = new Limits();
    let name = 0;
    await times(LIMITS.signInAddress.points, () => limits.trySignIn(HOME, `name ${name++}`));
    await expect(limits.trySignIn(HOME, 'one more')).rejects.toThrow(TooManyTriesError);
  });
});

it('the limit of links counts by address', async () => {
  const limits = new Limits();
  await times(LIMITS.link.points, () => limits.tryLink(HOME));
  await expect(limits.tryLink(HOME)).rejects.toThrow(TooManyTriesError);
  await expect(limits.tryLink('192.0.2.8')).resolves.toBeUndefined();
});

it.each([
  ['192.0.2.7', '192.0.2.7'],
  ['::ffff:192.0.2.7', '192.0.2.7'],
  ['2001:db8:0:1:aaaa::1', '2001:db8:0:1::/64'],
  ['2001:0DB8:0000:0001:ffff:ffff:ffff:ffff', '2001:db8:0:1::/64'],
  ['2001:db8::7', '2001:db8:0:0::/64'],
  ['fe80::1%eth0', 'fe80:0:0:0::/64'],
  ['::1', '0:0:0:0::/64'],
])('%s counts as %s', (address, network) => {
  expect(networkOf(address)).toBe(network);
});
