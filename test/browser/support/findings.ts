import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];
/** A caught mail is somebody else's page, in a frame in which no script runs, not even one that looks for faults. */
const FRAME = 'iframe.mail-page';

/** What keeps somebody from using the page, in both colour schemes; nothing moves meanwhile. */
export async function findings(page: Page): Promise<string[]> {
  const all: string[] = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const { violations } = await new AxeBuilder({ page }).withTags(RULES).exclude(FRAME).analyze();
    all.push(...violations.flatMap((v) => v.nodes.map((n) => `${colorScheme} ${v.id}: ${n.html.slice(0, 160)}`)));
  }
  return all;
}
