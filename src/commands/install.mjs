/**
 * Runs before every npm script: installs the packages when `node_modules` lacks something that
 * `package-lock.json` names, and otherwise does nothing. It runs on whatever Node the machine has, before any
 * package is there, so it is plain JavaScript and imports built-in modules only. It compares contents, not
 * dates: a fresh checkout, a copied folder and a change of branch all scramble dates.
 *
 * Standard output stays empty (`npm run -s quote` prints only JSON) and standard input is left unread.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const windows = process.platform === 'win32';

/** The first Node that runs TypeScript files without a flag. */
const leastNode = [22, 18];

function packagesOf(lockFile) {
  try {
    return JSON.parse(readFileSync(lockFile, 'utf8')).packages ?? {};
  } catch {
    return undefined;
  }
}

/** Whether npm's rule lets a package with these `os` or `cpu` words on this machine; `!x` forbids x. */
function allows(words, here) {
  const list = [words ?? []].flat();
  if (list.includes(`!${here}`)) return false;
  return list.every((word) => word.startsWith('!')) || list.includes(here) || list.includes('any');
}

function belongsHere(entry) {
  const fits = allows(entry.os, process.platform) && allows(entry.cpu, process.arch);
  // An optional package may also be left out for its C library or because it failed: only ours must be there.
  return fits && (!entry.optional || entry.bin?.node !== undefined);
}

function isComplete() {
  const wanted = packagesOf(join(root, 'package-lock.json'));
  const present = packagesOf(join(root, 'node_modules', '.package-lock.json'));
  if (wanted === undefined) {
    console.error(
      'package-lock.json is missing or is not JSON: restore it (git checkout package-lock.json).',
    );
    process.exit(1);
  }
  if (present === undefined) return false;
  const same = (a, b) => a?.version === b?.version && a?.integrity === b?.integrity;
  const lacks = Object.keys(wanted).filter((path) => path !== '' && belongsHere(wanted[path]));
  return (
    lacks.every((path) => same(wanted[path], present[path])) &&
    Object.keys(present).every((path) => same(wanted[path], present[path]))
  );
}

function install() {
  console.error('Installing the packages of package-lock.json (about 20 seconds, once) ...');
  const quiet = ['--loglevel=error', '--no-audit', '--no-fund', '--ignore-scripts'];
  const options = ['ci', '--include=dev', '--include=optional', ...quiet];
  const npm = process.env.npm_execpath ?? '';
  const stdio = ['ignore', 2, 2];
  const run = npm.endsWith('npm-cli.js')
    ? spawnSync(process.env.npm_node_execpath ?? process.execPath, [npm, ...options], { cwd: root, stdio })
    : spawnSync('npm', options, { cwd: root, stdio, shell: windows });
  if (run.status === 0) return;
  console.error(
    `npm ci failed${run.error ? ` (${run.error.message})` : ''}. Check the connection to the package registry ` +
      'and that package.json and package-lock.json agree, then run the same command again.',
  );
  process.exit(run.status ?? 1);
}

function isNewEnough(version) {
  const [major = 0, minor = 0] = version.replace('v', '').split('.').map(Number);
  return major > leastNode[0] || (major === leastNode[0] && minor >= leastNode[1]);
}

/** npm puts the packaged Node first on the path of its scripts; where none fits, the machine's own must do. */
function checkNode() {
  if (isNewEnough(process.version)) return;
  const packaged = join(root, 'node_modules', '.bin', windows ? 'node.cmd' : 'node');
  const found = existsSync(packaged);
  const run = found ? spawnSync(packaged, ['--version'], { encoding: 'utf8', shell: windows }) : undefined;
  if (run?.status === 0 && isNewEnough(run.stdout)) return;
  console.error(
    `Node ${leastNode.join('.')} or newer is needed; this machine (${process.platform} ${process.arch}) has ` +
      `${process.version}. ${
        found
          ? `The packaged one does not start: install a newer Node and delete ${packaged}.`
          : 'No packaged one fits it: install a newer Node.'
      }`,
  );
  process.exit(1);
}

if (!isComplete()) install();
checkNode();
