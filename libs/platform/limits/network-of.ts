import { isIPv6 } from 'node:net';

/** One line has 2^64 addresses of version 6, so they count as one; those of version 4 count each. */
export function networkOf(address: string): string {
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address);
  if (mapped?.[1]) return mapped[1];
  if (!isIPv6(address)) return address;
  const [head = '', tail] = address.split('%')[0]!.toLowerCase().split('::');
  const groups = head ? head.split(':') : [];
  const rest = tail ? tail.split(':') : [];
  const zeros = tail === undefined ? 0 : 8 - groups.length - rest.length;
  const all = [...groups, ...Array<string>(Math.max(0, zeros)).fill('0'), ...rest];
  return `${all.slice(0, 4).map((group) => group.replace(/^0+(?=.)/, '')).join(':')}::/64`;
}
