/**
 * Reads one source file into the facts that the rules are about. It asks a real parser, so a
 * word in a comment or in a text is never taken for code.
 */
import { parseSync } from 'vite';

export interface Import {
  /** As written: `../core/result`, `zod`, `node:fs`. */
  readonly target: string;
  readonly typeOnly: boolean;
  readonly line: number;
}

export interface FunctionSize {
  readonly name: string;
  readonly lines: number;
  readonly line: number;
  readonly isComponent: boolean;
}

export interface Found<T> {
  readonly value: T;
  readonly line: number;
}

export interface SourceFacts {
  /** From the top of the project, with forward slashes. */
  readonly path: string;
  readonly lines: number;
  readonly imports: readonly Import[];
  readonly functions: readonly FunctionSize[];
  readonly numbers: readonly Found<number | bigint>[];
  readonly texts: readonly Found<string>[];
  /** What is called or reached: `Math.random`, `.innerHTML`, `new Date`, `eval()`. */
  readonly reached: readonly Found<string>[];
  /** Names that no declaration in the file explains: globals. */
  readonly globals: readonly Found<string>[];
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

interface Gathered {
  readonly imports: Import[];
  readonly functions: FunctionSize[];
  readonly numbers: Found<number | bigint>[];
  readonly texts: Found<string>[];
  readonly reached: Found<string>[];
  readonly names: Found<string>[];
  readonly declared: Set<string>;
}

type LineOf = (offset: number) => number;

const FUNCTIONS = new Set(['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression']);

export function scan(path: string, text: string): SourceFacts {
  const lines = text.replace(/\n$/, '').split('\n').length;
  const got: Gathered = {
    imports: [],
    functions: [],
    numbers: [],
    texts: [],
    reached: [],
    names: [],
    declared: new Set(),
  };
  if (path.endsWith('.css')) got.imports.push(...styleImports(text));
  else if (!path.endsWith('.json')) gather(path, text, got);
  const { imports, functions, numbers, texts, reached } = got;
  const globals = got.names.filter(({ value }) => !got.declared.has(value));
  return { path, lines, imports, functions, numbers, texts, reached, globals };
}

function gather(path: string, text: string, got: Gathered): void {
  const { program, errors } = parseSync(path, text);
  // A file that cannot be parsed would pass every rule: better to stop here.
  if (errors.length > 0) throw new Error(`${path} cannot be parsed: ${errors[0]?.message}`);
  const lineOf = lineFinder(text);
  const read = (node: Node, above: readonly Node[]) => {
    const line = lineOf(node.start);
    readImport(node, line, got);
    readLiteral(node, line, got);
    readReach(node, line, got);
    readName(node, above.at(-1), line, got);
    if (FUNCTIONS.has(node.type)) got.functions.push(functionSize(path, node, above, lineOf));
  };
  walk(program as unknown as Node, [], read);
}

function walk(node: Node, above: readonly Node[], read: (node: Node, above: readonly Node[]) => void): void {
  read(node, above);
  const next = [...above, node];
  for (const child of Object.values(node).flat()) {
    if (isNode(child)) walk(child, next, read);
  }
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
}

function lineFinder(text: string): LineOf {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return (offset) => starts.findLastIndex((start) => start <= offset) + 1;
}

function styleImports(text: string): Import[] {
  return [...text.matchAll(/@import\s+(?:url\()?["']([^"']+)["']/g)].map((match) => ({
    target: match[1] as string,
    typeOnly: false,
    line: text.slice(0, match.index).split('\n').length,
  }));
}

function readImport(node: Node, line: number, got: Gathered): void {
  const note = (source: unknown, typeOnly: boolean) => {
    if (!isNode(source)) return;
    got.imports.push({ target: textOf(source) ?? '(computed)', typeOnly, line });
  };
  if (node.type === 'ImportDeclaration') note(node.source, node.importKind === 'type' || onlyTypes(node, 'importKind'));
  if (node.type === 'ExportNamedDeclaration')
    note(node.source, node.exportKind === 'type' || onlyTypes(node, 'exportKind'));
  if (node.type === 'ExportAllDeclaration') note(node.source, node.exportKind === 'type');
  if (node.type === 'ImportExpression') note(node.source, false);
  if (node.type === 'TSImportType') note(node.source ?? node.argument, true);
  // How a worker or an asset is named: new URL('./drawing.ts', import.meta.url).
  if (node.type === 'NewExpression' && nameOf(node.callee) === 'URL') {
    const [first, second] = node.arguments as Node[];
    const isFile = /\.\w+$/.test(textOf(first) ?? '');
    if (isFile && second && dottedName(second) === 'import.meta.url') note(first, false);
  }
}

function onlyTypes(node: Node, kind: string): boolean {
  const specifiers = node.specifiers as Node[];
  return specifiers.length > 0 && specifiers.every((one) => one[kind] === 'type');
}

function readLiteral(node: Node, line: number, got: Gathered): void {
  if (node.type === 'TemplateElement') got.texts.push({ value: String((node.value as { raw: string }).raw), line });
  if (node.type === 'JSXText') got.texts.push({ value: String(node.value), line });
  if (node.type !== 'Literal') return;
  if (typeof node.bigint === 'string') got.numbers.push({ value: BigInt(node.bigint), line });
  else if (typeof node.value === 'number') got.numbers.push({ value: node.value, line });
  else if (typeof node.value === 'string') got.texts.push({ value: node.value, line });
}

function readReach(node: Node, line: number, got: Gathered): void {
  const note = (value: string) => got.reached.push({ value, line });
  if (node.type === 'MemberExpression') {
    const property = node.computed ? textOf(node.property) : nameOf(node.property);
    if (property === undefined) return;
    note(`.${property}`);
    const owner = nameOf(node.object);
    if (owner !== undefined) note(`${owner}.${property}`);
  }
  if (node.type === 'JSXAttribute') note(`.${nameOf(node.name)}`);
  if (node.type === 'Property') note(`.${nameOf(node.key) ?? textOf(node.key)}`);
  if (node.type === 'CallExpression') note(`${nameOf(node.callee) ?? '?'}()`);
  if (node.type === 'NewExpression') note(`new ${nameOf(node.callee) ?? '?'}`);
}

/** Tells names that are used from names that are declared; keys and properties are neither. */
function readName(node: Node, parent: Node | undefined, line: number, got: Gathered): void {
  if (node.type !== 'Identifier' || !parent) return;
  const name = node.name as string;
  if (parent.type === 'MemberExpression' && parent.property === node && !parent.computed) return;
  if (parent.type === 'Property' && parent.key === node && !parent.shorthand) return;
  if (/^(TSPropertySignature|TSMethodSignature|PropertyDefinition|MethodDefinition)$/.test(parent.type)) return;
  const declares =
    /^(VariableDeclarator|FunctionDeclaration|ClassDeclaration|TSInterfaceDeclaration|TSTypeAliasDeclaration)$/.test(
      parent.type,
    ) && parent.id === node;
  const isParameter = FUNCTIONS.has(parent.type) && (parent.params as Node[]).includes(node);
  const isBound = /^(Import\w*Specifier|ArrayPattern|RestElement|AssignmentPattern|CatchClause)$/.test(parent.type);
  if (declares || isParameter || isBound || (parent.type === 'Property' && parent.shorthand)) got.declared.add(name);
  else got.names.push({ value: name, line });
}

function functionSize(path: string, node: Node, above: readonly Node[], lineOf: LineOf): FunctionSize {
  const name = functionName(node, above);
  const line = lineOf(node.start);
  const isComponent = path.endsWith('.tsx') && /^[A-Z]/.test(name);
  return { name, line, lines: lineOf(node.end) - line + 1, isComponent };
}

/** A function has its own name, or that of what it is given to: a constant, a key, a wrapping call's constant. */
function functionName(node: Node, above: readonly Node[]): string {
  const own = nameOf(node.id);
  if (own !== undefined) return own;
  const holder = above.findLast((one) => one.type !== 'CallExpression' && !one.type.startsWith('TS'));
  if (holder?.type === 'VariableDeclarator') return nameOf(holder.id) ?? 'unnamed';
  if (holder && /^(Property|MethodDefinition|PropertyDefinition)$/.test(holder.type)) {
    return nameOf(holder.key) ?? 'unnamed';
  }
  return 'unnamed';
}

function nameOf(node: unknown): string | undefined {
  if (!isNode(node)) return undefined;
  if (/^(Identifier|JSXIdentifier|PrivateIdentifier)$/.test(node.type)) return node.name as string;
  return undefined;
}

function textOf(node: unknown): string | undefined {
  if (!isNode(node)) return undefined;
  if (node.type === 'TSLiteralType') return textOf(node.literal);
  return node.type === 'Literal' && typeof node.value === 'string' ? node.value : undefined;
}

function dottedName(node: Node): string | undefined {
  if (node.type === 'MetaProperty') return `${nameOf(node.meta)}.${nameOf(node.property)}`;
  if (node.type !== 'MemberExpression' || !isNode(node.object)) return nameOf(node);
  return `${dottedName(node.object)}.${nameOf(node.property)}`;
}
