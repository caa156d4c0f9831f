/** What is said of YAML that cannot be read. The parser's own words are for programmers. */
import type { ErrorCode, YAMLParseError } from 'yaml';
import type { FaultDetail, PlacedDetail } from '../fault.ts';

const WELL_FORMED = 'fields as "name: value", each in its own line, lists with "- "';

/** Faults of YAML that is well-formed but not read. */
export const yamlFaults = {
  tooMuch: (deepest: number | null): FaultDetail => ({
    code: 'yaml-too-much',
    expected:
      deepest === null ? 'at most 20000 values when aliases are followed' : `at most ${deepest} levels`,
    received: 'more',
    hint: 'Write the values out, without aliases that repeat each other.',
  }),
  deadAlias: (name: string): FaultDetail => ({
    code: 'yaml-alias',
    expected: `an anchor &${name} further up in this file`,
    received: `*${name}`,
    hint: `Write &${name} before the value that is meant, or quote the text if it begins with a star.`,
  }),
  tag: (tag: string): FaultDetail => ({
    code: 'yaml-tag',
    expected: 'a value without a tag',
    received: tag.replace('tag:yaml.org,2002:', '!!'),
    hint: 'Remove the tag, or quote the text if it begins with an exclamation mark.',
  }),
  keyNotText: (): FaultDetail => ({
    code: 'yaml-syntax',
    expected: 'the name of a field',
    received: 'a list, a map or an alias as a name',
    hint: 'Write a plain name before the colon.',
  }),
  duplicateKey: (name: string): FaultDetail => ({
    code: 'duplicate-key',
    expected: `"${name}" once`,
    received: `"${name}" a second time`,
    hint: 'Remove one of the two.',
  }),
};

/** A directive such as `%YAML 1.1` would change what `yes` and dates mean. */
export function directiveFault(text: string): PlacedDetail | null {
  const found = /^%\S.*$/m.exec(text);
  if (found === null || /\S/.test(text.slice(0, found.index).replace(/^#.*$/gm, ''))) return null;
  const detail: FaultDetail = {
    code: 'yaml-directive',
    expected: 'fields without a YAML directive',
    received: found[0],
    hint: 'Remove the line.',
  };
  return { start: found.index, end: found.index + found[0].length, detail };
}

interface Explanation {
  readonly received: string;
  readonly hint: string;
}

const EXPLAINED: Readonly<Partial<Record<ErrorCode, Explanation>>> = {
  BAD_ALIAS: { received: 'a star or an ampersand without a name', hint: 'Put it in quotes: "*".' },
  BAD_INDENT: {
    received: 'a line with another indent, or a bracket that is still open above it',
    hint: 'Indent the fields of one group alike, by two spaces a level, and close every [ and {.',
  },
  BAD_DQ_ESCAPE: {
    received: 'a backslash with an unknown letter',
    hint: 'Write \\\\ for a backslash, or use single quotes.',
  },
  BAD_SCALAR_START: {
    received: 'a text that begins with a reserved character',
    hint: 'Put the text in double quotes.',
  },
  BLOCK_AS_IMPLICIT_KEY: {
    received: 'a second colon or a deeper group in the same line',
    hint: 'If the colon belongs to the text, put the text in double quotes; else begin a new line.',
  },
  MISSING_CHAR: {
    received: 'a quote, bracket, comma or colon is missing',
    hint: 'Close what was opened; write a colon and a space after the name of a field.',
  },
  MULTILINE_IMPLICIT_KEY: {
    received: 'a line without a colon',
    hint: 'Write "name: value", or indent the line if it continues a text.',
  },
  MULTIPLE_DOCS: {
    received: 'a second YAML document',
    hint: 'Remove the line --- and what follows, or make another file of it.',
  },
  UNEXPECTED_TOKEN: {
    received: 'something that does not fit here',
    hint: 'Put texts with quotes, colons, brackets or # in double quotes.',
  },
  TAG_RESOLVE_FAILED: { received: 'a tag', hint: 'Remove the tag, or quote the text if it begins with !.' },
};

/** The parser's first word on it is about the colon of the line below. */
const DEEPER: Explanation = {
  received: 'a value here, and a field in the next line that is indented deeper',
  hint: 'Indent the next line like this one.',
};

/** A code of the parser covers several slips; these are told by the parser's message. */
const BY_MESSAGE: readonly (readonly [RegExp, Explanation])[] = [
  [
    /^Sequence item without - /,
    {
      received: 'a field that is indented less than the others of its list item',
      hint: 'Add the missing spaces: the fields of an item begin below its first one, two spaces behind the "-".',
    },
  ],
  [
    /^A block sequence may not be used as an implicit map key/,
    {
      received: 'a "- " that is indented less than the items above it',
      hint: 'Add the missing spaces: every "-" of a list stands below the first one.',
    },
  ],
];

function explain({ code, message }: YAMLParseError): Explanation | undefined {
  return BY_MESSAGE.find(([form]) => form.test(message))?.[1] ?? EXPLAINED[code];
}

/**
 * The syntax errors worth showing: the first, since later ones mostly follow from it, and every tab.
 */
export function explainSyntax(errors: readonly YAMLParseError[]): PlacedDetail[] {
  const tabs = errors.filter((error) => error.code === 'TAB_AS_INDENT').map(tabFault);
  const first = errors.find((error) => error.code !== 'TAB_AS_INDENT');
  if (first === undefined || tabs.length > 0) return tabs;
  const deeper = errors.some(({ code, pos }) => code === 'MULTILINE_IMPLICIT_KEY' && pos[0] === first.pos[0]);
  const { received, hint } = (deeper ? DEEPER : explain(first)) ?? {
    received: first.message,
    hint: 'Compare it with a file that works.',
  };
  return [
    {
      start: first.pos[0],
      end: first.pos[1],
      detail: { code: 'yaml-syntax', expected: WELL_FORMED, received, hint },
    },
  ];
}

function tabFault(error: YAMLParseError): PlacedDetail {
  return {
    start: error.pos[0],
    end: error.pos[1],
    detail: {
      code: 'yaml-tab',
      expected: 'spaces at the beginning of a line',
      received: 'a tab',
      hint: 'Replace the tab with two spaces a level.',
    },
  };
}
