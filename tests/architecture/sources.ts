/** Reads the source files and their imports: .ts, .tsx, .mjs and both kinds of code in .astro. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** One import as written. */
export interface Import {
  /** Path from the project's root for a file of ours, else the package or module as written. */
  readonly target: string;
  readonly ours: boolean;
  readonly line: number;
  /** Gone at run time: `import type`, or every name of it marked `type`. */
  readonly typeOnly: boolean;
  readonly dynamic: boolean;
  /** In a script element of an .astro file: runs in the browser. */
  readonly inScript: boolean;
}

export interface Source {
  /** From the project's root, with forward slashes. */
  readonly path: string;
  readonly lineCount: number;
  readonly imports: readonly Import[];
  readonly parts: readonly Part[];
}

/** A stretch of code, and how many lines of its file come before it. */
export interface Part {
  readonly ast: ts.SourceFile;
  readonly linesBefore: number;
  readonly inScript: boolean;
}

/** The line of its file, from 1, on which a node starts. */
export function lineOf(node: ts.Node, part: Part): number {
  return part.ast.getLineAndCharacterOfPosition(node.getStart(part.ast)).line + 1 + part.linesBefore;
}

function parse(code: string, path: string, linesBefore: number, inScript: boolean): Part {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  return { ast: ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true, kind), linesBefore, inScript };
}

function countLines(text: string): number {
  return text.split('\n').length - 1;
}

function splitAstro(text: string, path: string): Part[] {
  const parts: Part[] = [];
  const front = /^\s*---\r?\n([\s\S]*?)^---/m.exec(text);
  if (front)
    parts.push(parse(front[1] ?? '', path, countLines(text.slice(0, text.indexOf('---') + 4)), false));
  for (const script of text.matchAll(/(<script\b[^>]*>)([\s\S]*?)<\/script>/g)) {
    const before = countLines(text.slice(0, script.index + (script[1] ?? '').length));
    parts.push(parse(script[2] ?? '', path, before, true));
  }
  return parts;
}

function isTypeOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  const clause = ts.isImportDeclaration(node) ? node.importClause : node;
  if (clause?.isTypeOnly) return true;
  if (ts.isImportDeclaration(node) && node.importClause?.name) return false;
  const names = ts.isImportDeclaration(node) ? node.importClause?.namedBindings : node.exportClause;
  if (!names || !(ts.isNamedImports(names) || ts.isNamedExports(names))) return false;
  const elements: readonly (ts.ImportSpecifier | ts.ExportSpecifier)[] = [...names.elements];
  return elements.length > 0 && elements.every((element) => element.isTypeOnly);
}

/** The text of the import in this node, and whether it is a dynamic one; undefined where the node is none. */
function readImport(node: ts.Node): { text: string; typeOnly: boolean; dynamic: boolean } | undefined {
  if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier) {
    const text = (node.moduleSpecifier as ts.StringLiteral).text;
    return { text, typeOnly: isTypeOnly(node), dynamic: false };
  }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
    return { text: (node.argument.literal as ts.StringLiteral).text, typeOnly: true, dynamic: false };
  }
  const called = ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword;
  const argument = called ? node.arguments[0] : undefined;
  if (argument && ts.isStringLiteralLike(argument))
    return { text: argument.text, typeOnly: false, dynamic: true };
  return undefined;
}

function listImports(path: string, part: Part): Import[] {
  const imports: Import[] = [];
  const visit = (node: ts.Node) => {
    const found = readImport(node);
    if (found) {
      const { text, typeOnly, dynamic } = found;
      const ours = text.startsWith('.');
      const target = ours ? relative(root, join(root, dirname(path), text.replace(/\?.*$/, ''))) : text;
      const line = lineOf(node, part);
      imports.push({
        target: target.replaceAll('\\', '/'),
        ours,
        line,
        typeOnly,
        dynamic,
        inScript: part.inScript,
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(part.ast);
  return imports;
}

/** Calls `visit` with every node of a source and the part that holds it. */
export function walk(source: Source, visit: (node: ts.Node, part: Part) => void): void {
  for (const part of source.parts) {
    const go = (node: ts.Node) => {
      visit(node, part);
      ts.forEachChild(node, go);
    };
    go(part.ast);
  }
}

/** Every folder and file below `folder`, from the project's root; nothing where there is no such folder. */
export function listPaths(folder: string): string[] {
  if (!existsSync(join(root, folder))) return [];
  const names = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' });
  return names.map((name) => `${folder}/${name.replaceAll('\\', '/')}`).sort();
}

export function isFolder(path: string): boolean {
  return statSync(join(root, path)).isDirectory();
}

/** Every source file below `folder`, parsed. */
export function readSources(folder: string): Source[] {
  const paths = listPaths(folder).filter((path) => /\.(ts|tsx|mjs|astro)$/.test(path));
  return paths.map((path) => {
    const text = readFileSync(join(root, path), 'utf8');
    const parts = path.endsWith('.astro') ? splitAstro(text, path) : [parse(text, path, 0, false)];
    return {
      path,
      lineCount: countLines(text),
      parts,
      imports: parts.flatMap((part) => listImports(path, part)),
    };
  });
}
