/** The shop as it stood at a commit: its files are read from git's store by the same reader, and never touch the disk. */
import { spawnSync } from 'node:child_process';
import { basename, resolve } from 'node:path';
import { isCivilDate } from '../../catalogue/civilDate.ts';
import { dayStartMs } from '../../catalogue/dayBounds.ts';
import { readCatalogue } from '../../catalogue/readCatalogue.ts';
import type { SourceFile } from '../../catalogue/reading/sourceText.ts';
import type { Reading } from '../../catalogue/shopReading.ts';

export interface Commit {
  /** Whole name. */
  readonly id: string;
  /** Civil date of the commit in its author's zone. */
  readonly date: string;
  readonly subject: string;
}

/** What was found, or why nothing was, with what to do. */
export type Past =
  | { readonly ok: true; readonly commit: Commit; readonly reading: Reading }
  | { readonly ok: false; readonly why: string };

const MOST_OUTPUT = 1 << 30;

function git(folder: string, args: readonly string[], input?: string): Buffer | string {
  const run = spawnSync('git', ['-C', folder, ...args], { input: input ?? '', maxBuffer: MOST_OUTPUT });
  if (run.error) return 'git does not start here: install it, or leave out --since.';
  return run.status === 0 ? run.stdout : run.stderr.toString().trim() || `git ${args[0]} failed.`;
}

/** The commit that `since` names: a commit, or a date, and then the last one before that day began in the shop. */
function resolveCommit(folder: string, since: string, timeZone: string): Commit | string {
  if (typeof git(folder, ['rev-parse', '--is-inside-work-tree']) === 'string')
    return (
      `${folder} is not kept in git, so there is nothing to compare with. ` +
      'To be told next time, run "git init", "git add ." and "git commit -m Begin" once in the shop\'s folder.'
    );
  let name = since;
  if (isCivilDate(since)) {
    const before = Math.floor(dayStartMs(since, timeZone) / 1000) - 1;
    const found = git(folder, ['rev-list', '-1', `--before=${before}`, 'HEAD'])
      .toString()
      .trim();
    if (found === '') return `There is no commit from before ${since}. Name a later day, or a commit.`;
    name = found;
  }
  const form = '--format=%H%x00%cs%x00%s';
  const told = git(folder, ['log', '-1', form, '--end-of-options', name, '--']);
  if (typeof told === 'string')
    return since === 'HEAD'
      ? 'Nothing is committed yet: commit the shop once, then changes can be told.'
      : `There is no commit "${since}". Expected a commit such as HEAD~1 or 1a2b3c4, or a day as YYYY-MM-DD.`;
  const [id = '', date = '', subject = ''] = told.toString().trim().split('\0');
  return { id, date, subject };
}

/** Every file below the folder at a commit; links are not followed, and names that begin with a point are left out. */
function filesAt(folder: string, root: string, commit: string): SourceFile[] | string {
  const listed = git(folder, ['ls-tree', '-r', '-z', commit, '--', '.']);
  if (typeof listed === 'string') return listed;
  const entries = listed
    .toString()
    .split('\0')
    .flatMap((line) => {
      const [, mode = '', object = '', path = ''] = /^(\d+) blob ([0-9a-f]+)\t(.*)$/s.exec(line) ?? [];
      const isRead = mode !== '' && mode !== '120000' && !/(?:^|\/)\./.test(path);
      return isRead ? [{ object, path }] : [];
    });
  const batch = git(folder, ['cat-file', '--batch'], entries.map(({ object }) => `${object}\n`).join(''));
  if (typeof batch === 'string') return entries.length === 0 ? [] : batch;
  let at = 0;
  return entries.map(({ path }) => {
    const headEnd = batch.indexOf(10, at);
    const size = Number(batch.subarray(at, headEnd).toString().split(' ')[2]);
    const bytes = batch.subarray(headEnd + 1, headEnd + 1 + size);
    at = headEnd + 1 + size + 1;
    return { path: `${root}/${path}`, bytes };
  });
}

/** The content folder as it stood at `since`: a commit, or a day of the shop's calendar. */
export function pastShop(contentFolder: string, since: string, timeZone: string): Past {
  const folder = resolve(contentFolder);
  const commit = resolveCommit(folder, since, timeZone);
  if (typeof commit === 'string') return { ok: false, why: commit };
  const root = basename(folder);
  const files = filesAt(folder, root, commit.id);
  if (typeof files === 'string') return { ok: false, why: files };
  const short = commit.id.slice(0, 7);
  if (files.length === 0)
    return { ok: false, why: `Commit ${short} holds no ${root} yet. Name a later commit or day.` };
  return { ok: true, commit, reading: readCatalogue(files, root) };
}
