/**
 * A captured mail as a page of its own. Its policy forbids everything that would fetch or run:
 * a mail is foreign text, and nothing may leave this machine because somebody looked at one.
 */
export const mailDocument = (html: string) =>
  `<!doctype html><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:"><base target="_blank"><style>body{margin:0;background:#fff;color:#1b2230;font:16px/1.5 system-ui,sans-serif;overflow-wrap:anywhere}</style>${html}`;

/** What a link in a mail may do here: only addresses of the web open at all, and one of this server keeps to this tab's site. */
export function linkOf(written: string, origin: string): { href: string; here: boolean } | null {
  if (!URL.canParse(written)) return null;
  const url = new URL(written);
  if (url.protocol !== 'http:' && url.protocol !== 'https:') return null;
  return { href: url.href, here: url.origin === origin };
}

/** "Hanne Birk <hanne@birk.example>" as its two parts. */
export function addressee(to: string): { name: string; address: string } {
  const parts = /^\s*"?(.*?)"?\s*<([^>]+)>\s*$/.exec(to);
  return parts?.[1] && parts[2] ? { name: parts[1], address: parts[2] } : { name: to, address: '' };
}
