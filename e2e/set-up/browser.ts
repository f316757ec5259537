import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { chromium } from 'playwright';

/** The variable that names the browser to test with. */
export const BROWSER_VARIABLE = 'CAPWRIGHT_CHROMIUM';

const WANTED = `The browser tests need Chromium, and none was found or could be installed. Do one of these:
  - install it from your system's packages (on Debian: apt-get install chromium)
  - npx playwright install --with-deps chromium
  - set ${BROWSER_VARIABLE} to the executable of a Chromium or Chrome that you have
and run the tests again.`;

/**
 * The path of a Chromium that starts. Looks for one that is there; else installs one, by its own downloader or,
 * as root where apt-get is, from the system's packages. Throws with what to do when there is none.
 */
export const findBrowser = (): string => {
  const named = process.env[BROWSER_VARIABLE];
  if (named) {
    if (starts(named)) return named;
    throw new Error(`${BROWSER_VARIABLE} names ${named}, which does not start.`);
  }
  const found = present() ?? downloaded() ?? packaged();
  if (found === undefined) throw new Error(WANTED);
  return found;
};

const present = (): string | undefined =>
  [chromium.executablePath(), ...onPath('chromium', 'chromium-browser', 'google-chrome')].find(starts);

const downloaded = (): string | undefined => {
  const cli = join(dirname(createRequire(import.meta.url).resolve('playwright/package.json')), 'cli.js');
  run(process.execPath, [cli, 'install', 'chromium'], 300_000);
  return present();
};

const packaged = (): string | undefined => {
  if (!isRoot() || onPath('apt-get').length === 0) return undefined;
  run('apt-get', ['update'], 300_000);
  run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], 600_000);
  return present();
};

const onPath = (...names: readonly string[]): readonly string[] =>
  names.flatMap((name) =>
    (process.env.PATH ?? '')
      .split(delimiter)
      .map((folder) => join(folder, name))
      .filter((path) => existsSync(path)),
  );

/** A stand-in that only says where to get a browser does not count, nor one whose libraries are missing. */
const starts = (path: string): boolean =>
  existsSync(path) && spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 30_000 }).status === 0;

const run = (command: string, args: readonly string[], timeout: number): void => {
  console.error(`No Chromium yet: ${[command, ...args].join(' ')}`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync(command, args, { stdio: ['ignore', 2, 2], env, timeout });
};

const isRoot = (): boolean => process.getuid?.() === 0;

/** No calls home, and no sandbox where root could not have one. */
export const launchArgs = (): string[] => [
  ...(isRoot() ? ['--no-sandbox'] : []),
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--disable-quic',
];
