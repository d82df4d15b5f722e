import { chromium, type Browser } from 'playwright-core';

/** Quiet and offline: nothing but the pages under test is asked for. */
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export function launchChromium(program: string): Promise<Browser> {
  return chromium.launch({ executablePath: program, headless: true, args: flags });
}
