import { randomUUID } from 'node:crypto';
import path from 'node:path';
import fastifyStatic from '@fastify/static';
import fastify from 'fastify';
import type { Browser, Page } from 'playwright-core';
import type { OrderScreen } from '#libs/contracts/screens/order';
import type { BenchContext } from '../support/bench.js';
import { launchChromium } from '../support/chromium.js';
import { findPeer } from '../support/peers.js';
import { median } from './support/load.js';
import { openBench, type BenchGround } from './support/open-bench.js';
import { repeatOrder } from './support/repeat-order.js';

// From dist/test/bench.
const web = path.resolve(import.meta.dirname, '../../web');
const ROUNDS = 5;
const ORDERS = 200;
const EVENTS = 100;

interface Shown { name: string; path: string; /** There once the page can be used. */ has: string; times: number; /** Pressed, and what is there when it has been answered. */ press: string; then: string }

// What runs in the page is handed over as text: nothing else here knows of a document.

/** Milliseconds from asking for the page until so many of these are drawn and the page answers again. */
const drawn = (page: Page, has: string, times: number): Promise<number> =>
  page.evaluate<number>(`new Promise((resolve) => {
    const look = () => requestAnimationFrame(() => (document.querySelectorAll(${JSON.stringify(has)}).length >= ${times} ? setTimeout(() => resolve(performance.now()), 0) : look()));
    look();
  })`);

/** From a press to the next frame that shows its answer. */
const answered = (page: Page, press: string, then: string): Promise<number> =>
  page.evaluate<number>(`new Promise((resolve) => {
    const began = performance.now();
    document.querySelector(${JSON.stringify(press)}).click();
    const look = () => requestAnimationFrame(() => (document.querySelector(${JSON.stringify(then)}) ? setTimeout(() => resolve(performance.now() - began), 0) : look()));
    look();
  })`);

const carried = async (page: Page): Promise<{ all: number; scripts: number }> => {
  const parts = await page.evaluate<{ name: string; bytes: number }[]>(`[...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')].map((part) => ({ name: part.name, bytes: part.transferSize }))`);
  const sum = (of: typeof parts) => of.reduce((n, { bytes }) => n + bytes, 0) / 1000;
  return { all: sum(parts), scripts: sum(parts.filter(({ name }) => /\.js(\?|$)/.test(name))) };
};

/** The same content and style with nothing to run, as the plainest server gives it. */
async function still(html: string) {
  const server = fastify();
  await server.register(fastifyStatic, { root: path.join(web, 'assets'), prefix: '/assets/' });
  server.get('/', (_request, reply) => reply.type('text/html; charset=utf-8').send(html.replace(/<script\b[\s\S]*?<\/script>|<link[^>]*modulepreload[^>]*>/g, '')));
  return { url: await server.listen({ port: 0, host: '127.0.0.1' }), close: () => server.close() };
}

async function opened(browser: Browser, url: string, cookie?: string): Promise<Page> {
  // Nothing is kept from one round to the next.
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-GB' });
  if (cookie) await context.addCookies([{ name: cookie.split('=')[0]!, value: cookie.slice(cookie.indexOf('=') + 1), url }]);
  return context.newPage();
}

async function measure({ row }: BenchContext, browser: Browser, ground: BenchGround, cookie: string, { name, path: at, has, times, press, then }: Shown): Promise<void> {
  const figures: { ours: number; bare: number; press: number; all: number; scripts: number }[] = [];
  let plain: Awaited<ReturnType<typeof still>> | undefined;
  for (let i = 0; i < ROUNDS; i++) {
    const page = await opened(browser, ground.url, cookie);
    await page.goto(ground.url + at, { waitUntil: 'commit' });
    const ours = await drawn(page, has, times);
    const size = await carried(page);
    plain ??= await still(await page.content());
    const bare = await opened(browser, plain.url);
    await bare.goto(plain.url, { waitUntil: 'commit' });
    figures.push({ ours, bare: await drawn(bare, has, times), press: await answered(page, press, then), ...size });
    await Promise.all([page.context().close(), bare.context().close()]);
  }
  await plain?.close();
  const middle = (of: keyof (typeof figures)[number]) => median(figures.map((f) => f[of]));
  row(`${name}: until it can be used ÷ a static page of the same content`, middle('ours'), 'ms', median(figures.map((f) => f.ours / f.bare)));
  row(`${name}: from a press to its answer`, middle('press'), 'ms');
  row(`${name}: scripts carried, first visit`, middle('scripts'), 'kB');
  row(`${name}: all that is carried, first visit`, middle('all'), 'kB');
}

/** A hundred times something happened to this order. */
async function fillOrder(ground: BenchGround, order: string, person: string, { cookie, csrf }: { cookie: string; csrf: string }): Promise<void> {
  let { version } = (await (await fetch(`${ground.url}/api/orders/${order}`, { headers: { cookie } })).json()) as OrderScreen;
  for (let i = 0; i < EVENTS; i++) {
    const reply = await fetch(`${ground.url}/api/orders/${order}/actions/confirmAddressees`, { method: 'POST', headers: { cookie, 'x-csrf': csrf, 'content-type': 'application/json' }, body: JSON.stringify({ key: randomUUID(), version, on: order, input: { people: [person] } }) });
    if (reply.status !== 200) throw new Error(`The action answered ${reply.status}: ${await reply.text()}`);
    version = ((await reply.json()) as OrderScreen).version;
  }
}

export async function run(context: BenchContext): Promise<void> {
  const chromium = findPeer('chromium');
  if (!chromium) return console.log('  left out: chromium is not on this machine (Debian package chromium)');
  const ground = await openBench(['Hazel', 'Nettle'], { web });
  const browser = await launchChromium(chromium);
  try {
    const session = await ground.signIn('marit@weirside.example');
    const road = (dog: string) => ground.roads.find((r) => r.dog.call === dog)!;
    await repeatOrder(ground.database.ownerUrl, road('Hazel').order, ORDERS - 1);
    await fillOrder(ground, road('Nettle').order, road('Nettle').dog.person.id, session);
    await measure(context, browser, ground, session.cookie, { name: `day board with ${ORDERS} orders`, path: '/', has: 'table.board a.dog', times: ORDERS, press: '.head p button', then: '.head p button[aria-pressed=true]' });
    await measure(context, browser, ground, session.cookie, { name: `order page with ${EVENTS} events`, path: `/orders/${road('Nettle').order}`, has: '.log > li:not(.day)', times: 14, press: '.log + p button', then: `.log > li:nth-child(${EVENTS})` });
  } finally {
    await browser.close();
    await ground.close();
  }
}
