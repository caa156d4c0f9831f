/**
 * YAML text to plain values. The nodes are kept, so that a path in the values leads back to its place. Done here
 * rather than by the library's own conversion: one walk finds duplicate keys, tags, dead aliases and the
 * document that grows a thousandfold when its aliases are followed.
 */
import { type Document, isAlias, isMap, isScalar, isSeq, type Node, parseDocument } from 'yaml';
import type { FaultDetail, PlacedDetail } from '../fault.ts';
import { directiveFault, explainSyntax, yamlFaults } from './yamlFaults.ts';

export interface YamlValue {
  readonly document: Document.Parsed;
  /** Plain values: maps, lists, strings, numbers, booleans, null. Undefined where the syntax is broken. */
  readonly value: unknown;
  readonly faults: readonly PlacedDetail[];
}

/** Values of one file, aliases followed: the largest file has some 2,000. */
const MOST_VALUES = 20_000;
const DEEPEST = 24;

class Walk {
  readonly faults: PlacedDetail[] = [];
  readonly document: Document;
  values = 0;
  overfull = false;
  /** A value could not be followed: what a schema says of the rest would mislead. */
  incomplete = false;

  constructor(document: Document) {
    this.document = document;
  }

  fault(node: Node, detail: FaultDetail): undefined {
    const [start, end] = node.range ?? [0, 1];
    this.faults.push({ start, end, detail });
    return undefined;
  }

  valueOf(node: Node | null, depth: number): unknown {
    if (node === null || this.overfull) return null;
    this.values += 1;
    if (depth > DEEPEST || this.values > MOST_VALUES) {
      this.overfull = true;
      this.incomplete = true;
      return this.fault(node, yamlFaults.tooMuch(depth > DEEPEST ? DEEPEST : null));
    }
    if (isAlias(node)) {
      const target = node.resolve(this.document);
      if (target === undefined) {
        this.incomplete = true;
        return this.fault(node, yamlFaults.deadAlias(node.source));
      }
      return this.valueOf(target, depth + 1);
    }
    if (node.tag !== undefined) this.fault(node, yamlFaults.tag(node.tag));
    if (isScalar(node)) return node.value;
    if (isSeq(node)) return node.items.map((item) => this.valueOf(item as Node, depth + 1));
    return isMap(node) ? this.mapOf(node.items as PairOf[], depth) : null;
  }

  mapOf(pairs: readonly PairOf[], depth: number): Record<string, unknown> {
    const map: Record<string, unknown> = {};
    for (const { key, value } of pairs) {
      if (!isScalar(key)) {
        if (key !== null) this.fault(key, yamlFaults.keyNotText());
        continue;
      }
      const name = String(key.value);
      if (Object.hasOwn(map, name)) this.fault(key, yamlFaults.duplicateKey(name));
      // Defined, not assigned: a key `__proto__` must stay a key.
      const entry = {
        value: this.valueOf(value, depth + 1),
        enumerable: true,
        configurable: true,
        writable: true,
      };
      Object.defineProperty(map, name, entry);
    }
    return map;
  }
}

interface PairOf {
  readonly key: Node | null;
  readonly value: Node | null;
}

/** The nodes of one YAML document by the rules of YAML 1.2: `yes`, `no` and dates are texts. Never throws. */
export function parseYaml(text: string): Document.Parsed {
  return parseDocument(text, {
    version: '1.2',
    prettyErrors: false,
    stringKeys: true,
    uniqueKeys: false,
    logLevel: 'error',
  });
}

/** Reads one YAML document. Never throws. */
export function readYaml(text: string): YamlValue {
  const document = parseYaml(text);
  const directive = directiveFault(text);
  const broken = [...(directive === null ? [] : [directive]), ...explainSyntax(document.errors)];
  if (broken.length > 0) return { document, value: undefined, faults: broken };
  const walk = new Walk(document);
  const value = walk.valueOf(document.contents, 0);
  return { document, value: walk.incomplete ? undefined : value, faults: walk.faults };
}
