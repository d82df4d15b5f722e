import ipaddr from 'ipaddr.js';

// RFC 4291, 2.4 and the registry of IANA: all global unicast that was given out lies in 2000::/3
const GLOBAL_UNICAST: [ipaddr.IPv6, number] = [ipaddr.IPv6.parse('2000::'), 3];

/** Whether an address lies in the open internet: not in this machine, a private network, a provider's shared one, a group or a special use, whatever form it is written in. */
export function inTheWorld(address: string): boolean {
  if (!ipaddr.isValid(address)) return false;
  const plain = ipaddr.process(address); // an IPv4 address in IPv6's clothes is judged as what it is
  return plain.range() === 'unicast' && (plain.kind() === 'ipv4' || plain.match(GLOBAL_UNICAST));
}
