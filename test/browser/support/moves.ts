import type { Page } from 'playwright-core';

/** Resolves when the words stand on the page. */
export const see = (page: Page, words: string | RegExp): Promise<void> => page.getByText(words).filter({ visible: true }).first().waitFor();

/** Where an order's page has the form of the act that was chosen. */
export const panel = (page: Page) => page.locator('.act-panel');

/** Chooses what to do on an order's page. */
export async function act(page: Page, name: string): Promise<void> {
  await page.getByRole('main').getByRole('button', { name, exact: true }).first().click();
  await panel(page).waitFor();
}

/** Sends the form that is open, and waits until the order has taken it. */
export async function done(page: Page, button: string): Promise<void> {
  await panel(page).getByRole('button', { name: button, exact: true }).click();
  await panel(page).waitFor({ state: 'detached' });
}

/** Both in one, for an act that asks for nothing more. */
export async function actAtOnce(page: Page, name: string): Promise<void> {
  await act(page, name);
  await done(page, name);
}

/** Opens a list of choices and takes one. */
export async function choose(page: Page, list: string, option: string): Promise<void> {
  await page.getByRole('button', { name: list }).click();
  await page.getByRole('option', { name: option, exact: true }).click();
}

export const answer = (page: Page, question: string | RegExp, words: string): Promise<void> =>
  page.getByRole('radiogroup', { name: question }).getByText(words, { exact: true }).click();

/** Goes on with Tab until something inside the target has the focus. */
export async function tabTo(page: Page, target: string): Promise<void> {
  const there = page.locator(`${target} :focus, ${target}:focus`);
  for (let presses = 0; (await there.count()) === 0; presses++) {
    if (presses > 30) throw new Error(`Tab never comes to ${target}.`);
    await page.keyboard.press('Tab');
  }
}

/** Where the newest mail in the mailbox that fits leads to. */
export async function linkInMail(page: Page, mail: RegExp, to: RegExp): Promise<string> {
  await page.getByRole('link', { name: 'Mailbox' }).click();
  await page.getByRole('link', { name: mail }).first().click();
  const link = await page.locator('.mail-links').getByRole('link', { name: to }).getAttribute('href');
  if (!link) throw new Error('This mail has no such link.');
  return link;
}
