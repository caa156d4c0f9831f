import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { buildGraph, findCycle, findLongestChain, findReachable } from './architecture/graph.ts';
import { coreFolders, mayImport, mayImportLater, pureFolders } from './architecture/layers.ts';
import { isFolder, lineOf, listPaths, readSources, type Source, walk } from './architecture/sources.ts';

const sources = readSources('src');
const tests = readSources('tests');

function folderOf(path: string): string {
  return path.split('/')[1] ?? '';
}

function within(folders: readonly string[]): (source: Source) => boolean {
  return ({ path }) => path.startsWith('src/') && folders.includes(folderOf(path));
}

const pure = sources.filter(within(pureFolders));
const core = sources.filter(within(coreFolders));

describe('imports', () => {
  it('point from each folder only to those below it, types included', () => {
    const faults = sources.flatMap(({ path, imports }) => {
      const from = folderOf(path);
      return imports
        .filter(({ ours, target, dynamic }) => {
          const to = folderOf(target);
          if (!ours || (target.startsWith('src/') && to === from)) return false;
          const allowed = [...(mayImport[from] ?? []), ...(dynamic ? (mayImportLater[from] ?? []) : [])];
          return !(target.startsWith('src/') && allowed.includes(to));
        })
        .map(({ line, target }) => {
          const allowed = mayImport[from]?.join(', ') || 'no other folder';
          return `${path}:${line} imports ${target}; ${from} may import ${allowed}`;
        });
    });
    expect(faults).toEqual([]);
  });

  it('name only folders that have a place in the order', () => {
    const unknown = sources.filter(
      ({ path }) => path.split('/').length > 2 && !(folderOf(path) in mayImport),
    );
    expect(
      unknown.map(({ path }) => `${path}: give its folder a line in tests/architecture/layers.ts`),
    ).toEqual([]);
  });

  it('lead to a file that is there, with its extension written', () => {
    const present = new Set([...listPaths('src'), ...listPaths('tests')]);
    const faults = [...sources, ...tests].flatMap(({ path, imports }) =>
      imports
        .filter(({ ours, target }) => ours && /^(src|tests)\//.test(target) && !present.has(target))
        .map(({ line, target }) => `${path}:${line} imports ${target}: no such file`),
    );
    expect(faults).toEqual([]);
  });

  it('form no circle', () => {
    expect(findCycle(buildGraph([...sources, ...tests]))?.join(' → ')).toBeUndefined();
  });

  it('form no chain of more than 8 files inside a folder of the core', () => {
    const faults = coreFolders.flatMap((folder) => {
      const chain = findLongestChain(buildGraph(core.filter(within([folder]))));
      return chain.length > 8 ? [`${chain.length} files: ${chain.join(' → ')}`] : [];
    });
    expect(faults).toEqual([]);
  });

  it('bring nothing from outside into the pure folders', () => {
    const faults = pure.flatMap(({ path, imports }) =>
      imports.filter(({ ours }) => !ours).map(({ line, target }) => `${path}:${line} imports ${target}`),
    );
    expect(faults).toEqual([]);
  });

  it('take zod in its small form only, where texts from outside are read', () => {
    const places = /^src\/(catalogue\/schema|quote\/\w+Schema\.ts|order\/)/;
    const faults = sources.flatMap(({ path, imports }) =>
      imports
        .filter(({ target }) => /^zod(\/|$)/.test(target) && !(target === 'zod/mini' && places.test(path)))
        .map(
          ({ line, target }) =>
            `${path}:${line} imports ${target}; expected zod/mini, in catalogue/schema*, quote/*Schema.ts or order`,
        ),
    );
    expect(faults).toEqual([]);
  });

  it("take Node's modules in commands, the reader of content and its Astro plugin alone", () => {
    const places = /^src\/(commands\/|catalogue\/(load|astro)|publishing\/keepPicture)/;
    const faults = sources.flatMap(({ path, imports }) =>
      imports
        .filter(({ target }) => target.startsWith('node:') && !places.test(path))
        .map(
          ({ line, target }) => `${path}:${line} imports ${target}; only commands and catalogue/load* may`,
        ),
    );
    expect(faults).toEqual([]);
  });

  it('keep the schemas and the reader of content out of the browser', () => {
    const graph = buildGraph(sources, ({ typeOnly }) => !typeOnly);
    const scripts = sources.flatMap(({ imports }) =>
      imports
        .filter(({ ours, inScript, typeOnly }) => ours && inScript && !typeOnly)
        .map(({ target }) => target),
    );
    const islands = sources.filter(within(['islands', 'configurator'])).map(({ path }) => path);
    const faults = [...findReachable(graph, [...islands, ...scripts])]
      .filter(([path]) => /^src\/(catalogue\/(schema|load|astro)|commands\/)/.test(path))
      .map(([, chain]) => chain.join(' → '));
    expect(faults).toEqual([]);
  });
});

describe('the pure folders', () => {
  const forbidden = new Set(
    (
      'Date console process document window globalThis fetch performance setTimeout setInterval crypto navigator ' +
      'localStorage sessionStorage indexedDB require'
    ).split(' '),
  );

  /** Whether the word stands for the thing itself, not for a property or a type of that name. */
  function isUse(node: ts.Identifier): boolean {
    const { parent } = node;
    const named = parent as { readonly name?: ts.Node };
    return named.name !== node && !ts.isTypeNode(parent) && !ts.isQualifiedName(parent);
  }

  it('read no clock, chance, disk, network or screen', () => {
    const faults: string[] = [];
    for (const source of pure) {
      walk(source, (node, part) => {
        const at = () => `${source.path}:${lineOf(node, part)}`;
        if (ts.isIdentifier(node) && forbidden.has(node.text) && isUse(node))
          faults.push(`${at()} uses ${node.text}`);
        if (ts.isPropertyAccessExpression(node) && node.getText(part.ast) === 'Math.random') {
          faults.push(`${at()} uses Math.random`);
        }
      });
    }
    expect(faults).toEqual([]);
  });
});

describe('each exported function of optics and money', () => {
  it('says in a comment what it returns and in which unit', () => {
    const faults: string[] = [];
    for (const source of pure.filter(within(['optics', 'money']))) {
      walk(source, (node, part) => {
        const isFunction =
          ts.isFunctionDeclaration(node) ||
          (ts.isVariableStatement(node) &&
            node.declarationList.declarations.some(
              ({ initializer }) =>
                initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer)),
            ));
        if (!isFunction || !node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) return;
        if (ts.getJSDocCommentsAndTags(node).length > 0) return;
        faults.push(`${source.path}:${lineOf(node, part)} has no doc comment`);
      });
    }
    expect(faults).toEqual([]);
  });
});

describe('files', () => {
  it('fit one sitting: 200 lines in the core, 230 elsewhere', () => {
    const limitOf = (source: Source) => (within(coreFolders)(source) ? 200 : 230);
    const faults = sources.filter((source) => source.lineCount > limitOf(source));
    expect(
      faults.map((source) => `${source.path}: ${source.lineCount} lines, at most ${limitOf(source)}`),
    ).toEqual([]);
  });

  it('lie in folders named for what they are about', () => {
    const folders = [...listPaths('src'), ...listPaths('tests')].filter(isFolder);
    expect(folders.filter((path) => /\/(utils?|helpers?|libs?|common)$/.test(path))).toEqual([]);
  });

  it('are mirrored: a test lies where its source does', () => {
    const apart = /^tests\/(published|journeys|site|fixtures|bench|solids|architecture)[/.]/;
    const present = new Set(listPaths('src'));
    const faults = tests
      .filter(({ path }) => path.endsWith('.test.ts') && !apart.test(path))
      .map(({ path }) => ({ path, base: path.replace(/^tests\//, 'src/').replace(/\.test\.ts$/, '') }))
      .filter(
        ({ base }) => !['.ts', '.tsx', '.mjs', '.astro'].some((extension) => present.has(base + extension)),
      )
      .map(({ path, base }) => `${path} tests ${base}.ts, which is not there`);
    expect(faults).toEqual([]);
  });
});

describe('the models that optics is checked against', () => {
  it('owe nothing to what they check', () => {
    const graph = buildGraph([...sources, ...tests], ({ typeOnly }) => !typeOnly);
    const faults = tests
      .filter(({ path }) => /^tests\/(solids|optics)\/(.*\/)?[^/]*model[^/]*\.ts$/i.test(path))
      .filter(({ path }) => !path.endsWith('.test.ts'))
      .flatMap(({ path }) => [...findReachable(graph, [path])])
      .filter(([path]) => path.startsWith('src/optics/'))
      .map(([, chain]) => chain.join(' → '));
    expect(faults).toEqual([]);
  });
});
