import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ownerPreview } from '../../../src/pages/_preview/devOnly.ts';

type Setup = NonNullable<ReturnType<typeof ownerPreview>['hooks']['astro:config:setup']>;

/** The routes that a command adds, each with its component. */
function routesOf(command: 'dev' | 'build' | 'preview') {
  const routes: Parameters<Parameters<Setup>[0]['injectRoute']>[0][] = [];
  const root = new URL('../../../', import.meta.url);
  const given = {
    command,
    config: { root },
    injectRoute: (route: (typeof routes)[number]) => routes.push(route),
  };
  void ownerPreview().hooks['astro:config:setup']?.(given as unknown as Parameters<Setup>[0]);
  return routes;
}

describe("the owner's preview", () => {
  it('is on the development server', () => {
    const routes = routesOf('dev');
    expect(routes.map(({ pattern }) => pattern)).toContain('/preview');
    for (const { entrypoint } of routes)
      expect(existsSync(fileURLToPath(entrypoint as URL)), String(entrypoint)).toBe(true);
  });

  it('is in no build', () => {
    expect(routesOf('build')).toEqual([]);
    expect(routesOf('preview')).toEqual([]);
  });
});
