import type { Import, Source } from './sources.ts';

/** Which files a file imports, by path. */
export type Graph = ReadonlyMap<string, readonly string[]>;

/** The graph of the imports that `keep` lets through, among these sources alone. */
export function buildGraph(sources: readonly Source[], keep: (link: Import) => boolean = () => true): Graph {
  const paths = new Set(sources.map(({ path }) => path));
  return new Map(
    sources.map(({ path, imports }) => [
      path,
      imports.filter((link) => link.ours && paths.has(link.target) && keep(link)).map(({ target }) => target),
    ]),
  );
}

/** One circle of imports, as the files on it with the first repeated at the end; undefined where there is none. */
export function findCycle(graph: Graph): readonly string[] | undefined {
  const done = new Set<string>();
  const trail: string[] = [];
  const visit = (path: string): readonly string[] | undefined => {
    if (trail.includes(path)) return [...trail.slice(trail.indexOf(path)), path];
    if (done.has(path)) return undefined;
    trail.push(path);
    for (const next of graph.get(path) ?? []) {
      const cycle = visit(next);
      if (cycle) return cycle;
    }
    trail.pop();
    done.add(path);
    return undefined;
  };
  for (const path of graph.keys()) {
    const cycle = visit(path);
    if (cycle) return cycle;
  }
  return undefined;
}

/** The longest chain of imports in a graph without circles, as the files on it. */
export function findLongestChain(graph: Graph): readonly string[] {
  const longest = new Map<string, readonly string[]>();
  const visit = (path: string): readonly string[] => {
    const known = longest.get(path);
    if (known) return known;
    longest.set(path, [path]);
    const below = (graph.get(path) ?? []).map(visit);
    const best = below.reduce<readonly string[]>(
      (most, chain) => (chain.length > most.length ? chain : most),
      [],
    );
    const chain = [path, ...best];
    longest.set(path, chain);
    return chain;
  };
  return [...graph.keys()]
    .map(visit)
    .reduce((most, chain) => (chain.length > most.length ? chain : most), []);
}

/** Every file that one of `starts` leads to, itself included, each with the chain of files that leads there. */
export function findReachable(
  graph: Graph,
  starts: readonly string[],
): ReadonlyMap<string, readonly string[]> {
  const chains = new Map<string, readonly string[]>(starts.map((path) => [path, [path]]));
  const queue = [...starts];
  for (let path = queue.shift(); path !== undefined; path = queue.shift()) {
    for (const next of graph.get(path) ?? []) {
      if (chains.has(next)) continue;
      chains.set(next, [...(chains.get(path) ?? []), next]);
      queue.push(next);
    }
  }
  return chains;
}
