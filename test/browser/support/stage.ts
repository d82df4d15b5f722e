import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { launchChromium } from '#test/support/chromium';
import { startServer, type RunningServer } from '#test/support/running-server';
import { demoSignIns } from '#seed/sign-ins';

/** Milliseconds after which a page that has not got there is a failure; a busy machine is slow. */
const PATIENCE = 30_000;

export const desktop: BrowserContextOptions = { viewport: { width: 1440, height: 900 } };
export const tablet: BrowserContextOptions = { viewport: { width: 1024, height: 768 }, hasTouch: true };
export const phone: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** A running server with its pages, and a browser in which each person has a window of their own. */
export class Stage {
  /** What a page complained about; a page that works complains about nothing. */
  readonly complaints: string[] = [];

  private constructor(readonly server: RunningServer, readonly browser: Browser) {}

  /** `allow`: addresses inside our own network that may be called. */
  static async open(chromium: string, { allow = [] }: { allow?: string[] } = {}): Promise<Stage> {
    const [server, browser] = await Promise.all([startServer({ pages: true, allow }), launchChromium(chromium)]);
    return new Stage(server, browser);
  }

  /** Nobody is signed in yet. */
  async window(kind: BrowserContextOptions = desktop): Promise<Page> {
    const context = await this.browser.newContext({ locale: 'en-GB', ...kind, baseURL: this.server.url, reducedMotion: 'reduce' });
    context.setDefaultTimeout(PATIENCE);
    const page = await context.newPage();
    page.on('pageerror', (error) => this.complaints.push(`${page.url()}: ${error.message}`));
    page.on('console', (message) => {
      // A browser also notes every answer that is no success, and asking who is signed in may be answered so.
      if (message.type() === 'error' && !message.text().startsWith('Failed to load resource')) this.complaints.push(`${page.url()}: ${message.text()}`);
    });
    return page;
  }

  /** Signs in by typing. */
  async person(name: string, kind: BrowserContextOptions = desktop): Promise<Page> {
    const known = demoSignIns().find((s) => s.name === name);
    if (!known) throw new Error(`Nobody in the register is called ${name}.`);
    const page = await this.window(kind);
    await page.goto('/sign-in');
    await page.getByLabel('Mail address').fill(known.email);
    await page.getByLabel('Password').fill(known.password);
    await page.getByRole('button', { name: 'Sign in', exact: true }).click();
    await page.getByRole('button', { name: 'Sign out' }).waitFor();
    return page;
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.server.close();
  }
}
