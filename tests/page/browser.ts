import { existsSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";

/** Where Debian puts its Chromium; another place can be named in the environment. */
const PATH = process.env["CHROMIUM"] ?? "/usr/bin/chromium";

const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
];

/** The browser of a test file; it starts before the tests and ends after them. */
export function useBrowser(): { open(url: string, size?: Size): Promise<Page> } {
  let browser: Browser | undefined;
  beforeAll(async () => {
    if (!existsSync(PATH)) {
      const says = `There is no browser at ${PATH}; on Debian: apt-get install chromium`;
      // Where in the test it was noticed helps nobody.
      throw Object.assign(new Error(says), { stack: says });
    }
    browser = await chromium.launch({ executablePath: PATH, args: flags });
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
  });
  return {
    open: async (url, size = { width: 1200, height: 900 }) => {
      if (browser === undefined) throw new Error("The browser has not started.");
      const page = await browser.newPage({ viewport: size });
      await page.goto(url);
      return page;
    },
  };
}

export interface Size {
  readonly width: number;
  readonly height: number;
}
