/*
 * Brings node_modules to what package-lock.json says; every npm script runs it first. With the argument `run`: what the program itself needs is enough, and
 * packages for tests and development are not waited for.
 * It has to run on plain Node 20 before anything is installed, so it is JavaScript and imports node: modules only.
 * All that comes after it runs on the Node release that it installs as a package. It writes to stderr only, so that
 * stdout stays the caller's.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const OLDEST_NODE = 20;
const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** @typedef {Record<string, { version?: string, optional?: boolean, dev?: boolean }>} Packages package by its path, as npm's lock files list them */

/**
 * Optional packages are built for one platform each and may rightly be missing.
 *
 * @param {Packages} locked what package-lock.json lists
 * @param {Packages} installed what npm noted in node_modules/.package-lock.json
 * @returns {string[]} paths of the packages that are missing or stand there in another version
 */
export function stalePackages(locked, installed) {
  return Object.entries(locked)
    .filter(
      ([place, { version, optional }]) => place !== '' && !optional && installed[place]?.version !== version,
    )
    .map(([place]) => place);
}

/**
 * @param {Packages} packages
 * @returns {Packages} those that the program itself needs, to build and to run
 */
export const withoutDevelopment = (packages) =>
  Object.fromEntries(Object.entries(packages).filter(([, { dev }]) => !dev));

/**
 * @param {string} file
 * @returns {Packages}
 */
function packagesIn(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {};
}

/** The pinned Node comes by an install script, which some npm settings leave out without failing. */
function hasPinnedNode() {
  const bin = path.join(ROOT, 'node_modules/node/bin');
  return existsSync(path.join(bin, 'node')) || existsSync(path.join(bin, 'node.exe'));
}

/**
 * Runs npm on the Node that started this npm script: the one in node_modules is about to be replaced.
 *
 * @param {string[]} args
 */
function npm(args) {
  const { npm_execpath, npm_node_execpath } = process.env;
  const stdio = /** @type {const} */ (['ignore', 2, 2]);
  const { status } =
    npm_execpath && npm_node_execpath
      ? spawnSync(npm_node_execpath, [npm_execpath, ...args], { cwd: ROOT, stdio: [...stdio] })
      : spawnSync(`npm ${args.join(' ')}`, { cwd: ROOT, stdio: [...stdio], shell: true });
  return status === 0;
}

/** @param {string} message */
function fail(message) {
  console.error(`\n${message}`);
  process.exit(1);
}

/** @param {boolean} onlyToRun */
function setUp(onlyToRun) {
  if (Number.parseInt(process.versions.node, 10) < OLDEST_NODE)
    fail(
      `Ridgelarder needs Node ${OLDEST_NODE} or newer to set itself up; this is Node ${process.versions.node}.`,
    );

  const locked = packagesIn(path.join(ROOT, 'package-lock.json'));
  const installed = packagesIn(path.join(ROOT, 'node_modules/.package-lock.json'));
  const stale = stalePackages(onlyToRun ? withoutDevelopment(locked) : locked, installed);
  if (stale.length > 0) {
    console.error('Installing packages; this takes a minute or two the first time.');
    // Who develops here keeps the packages for that.
    const development =
      onlyToRun && !Object.values(installed).some(({ dev }) => dev) ? '--omit=dev' : '--include=dev';
    if (!npm(['ci', development, '--no-audit', '--no-fund', '--loglevel=error']))
      fail('npm could not install the packages; the reason stands above. Is the network reachable?');
  }
  if (!hasPinnedNode() && (!npm(['rebuild', 'node', '--loglevel=error']) || !hasPinnedNode()))
    fail(
      'The install script of the package "node" did not run. Allow it (npm install-scripts approve node), then try again.',
    );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) setUp(process.argv[2] === 'run');
