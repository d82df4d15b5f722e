import { inTheWorld } from './in-the-world.js';

describe('an address is in the open internet', () => {
  it.each(['93.184.216.34', '8.8.8.8', '2a00:1450:4001::1', '::ffff:8.8.8.8'])('%s', (address) => {
    expect(inTheWorld(address)).toBe(true);
  });
});

// special-purpose addresses: RFC 6890 and its registries at IANA
describe('an address is not', () => {
  it.each([
    ['this machine', ['127.0.0.1', '127.8.9.10', '0.0.0.0', '::1', '::']],
    ['a private network', ['10.1.2.3', '172.16.0.1', '172.31.255.255', '192.168.1.1', 'fd00::1', 'fec0::1']],
    ['the link, and what cloud machines are told there', ['169.254.169.254', 'fe80::1']],
    ['what a provider shares among its customers', ['100.64.0.1', '100.127.255.255']],
    ['a group', ['224.0.0.1', '239.255.255.255', 'ff02::1', '255.255.255.255']],
    ['kept for other uses', ['192.0.0.8', '192.0.2.1', '198.18.0.1', '198.51.100.7', '203.0.113.9', '240.0.0.1', '2001:db8::1', '100::1']],
    ['an IPv4 address in another form', ['::ffff:127.0.0.1', '::ffff:a00:1', '::127.0.0.1', '64:ff9b::a00:1', '64:ff9b:1::a00:1', '2002:7f00:1::', '2001::1']],
    ['an address at all', ['', 'localhost', '10.0.0', 'fe80::1%eth0']],
  ])('%s', (_, addresses) => {
    expect(addresses.filter(inTheWorld)).toEqual([]);
  });
});
