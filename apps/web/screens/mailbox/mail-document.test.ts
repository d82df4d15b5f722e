import { addressee, linkOf, mailDocument } from './mail-document.js';

describe('a captured mail', () => {
  it('is shown under a policy that fetches and runs nothing, stated before any of its own text', () => {
    const page = mailDocument('<img src="https://elsewhere.example/seen.png"><script>x</script>');
    expect(page.indexOf("default-src 'none'")).toBeLessThan(page.indexOf('elsewhere.example'));
    expect(page).not.toMatch(/script-src|allow-scripts/);
  });

  it('opens only addresses of the web, and tells those of this server from others', () => {
    expect(linkOf('http://127.0.0.1:4800/o/abc', 'http://127.0.0.1:4800')).toEqual({ href: 'http://127.0.0.1:4800/o/abc', here: true });
    expect(linkOf('https://elsewhere.example/x', 'http://127.0.0.1:4800')?.here).toBe(false);
    for (const bad of ['javascript:alert(1)', 'data:text/html,x', '/o/abc', 'nonsense']) expect(linkOf(bad, 'http://127.0.0.1:4800')).toBeNull();
  });

  it('splits an addressee, and leaves a bare address whole', () => {
    expect(addressee('"Birk, Hanne" <hanne@birk.example>')).toEqual({ name: 'Birk, Hanne', address: 'hanne@birk.example' });
    expect(addressee('hanne@birk.example')).toEqual({ name: 'hanne@birk.example', address: '' });
  });
});
