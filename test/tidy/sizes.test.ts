import ts from 'typescript';
import { expect, test } from 'vitest';
import { sourceFiles, type SourceFile } from './repository.ts';

const LONGEST_FILE = 300;
const LONG_FILE = 200;
const SHARE_OF_LONG_FILES = 0.1;
const LONGEST_FUNCTION = 70;

const files = sourceFiles();

test(`no file is longer than ${LONGEST_FILE} lines`, () => {
  expect(files.filter(({ lines }) => lines > LONGEST_FILE).map(({ path, lines }) => `${path}: ${lines}`)).toEqual([]);
});

test(`nine files of ten are no longer than ${LONG_FILE} lines`, () => {
  const long = files.filter(({ lines }) => lines > LONG_FILE);

  expect(long.length / files.length, long.map(({ path, lines }) => `${path}: ${lines}`).join('\n')).toBeLessThanOrEqual(
    SHARE_OF_LONG_FILES,
  );
});

test(`no function is longer than ${LONGEST_FUNCTION} lines`, () => {
  expect(files.filter(({ path }) => /\.[mc]?[jt]sx?$/.test(path)).flatMap(longFunctions)).toEqual([]);
});

test('a function that is too long would be named', () => {
  const body = '  one();\n'.repeat(LONGEST_FUNCTION);
  const text = `const short = () => 1;\nfunction long() {\n${body}}\n`;

  expect(longFunctions({ path: 'a.ts', text, lines: 0 })).toEqual(['a.ts:2 long: 72']);
});

/** The function around all tests of a file (`describe`) is a heading, not a piece of work. */
function longFunctions({ path, text }: SourceFile): string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body && !isDescribe(node)) {
      const first = source.getLineAndCharacterOfPosition(node.getStart()).line;
      const length = source.getLineAndCharacterOfPosition(node.getEnd()).line - first + 1;
      if (length > LONGEST_FUNCTION) found.push(`${path}:${first + 1} ${nameOf(node)}: ${length}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const isDescribe = ({ parent }: ts.Node): boolean => ts.isCallExpression(parent) && parent.expression.getText().startsWith('describe');

function nameOf(node: ts.SignatureDeclaration): string {
  const named = node.name ?? (ts.isVariableDeclaration(node.parent) ? node.parent.name : undefined);
  return named?.getText() ?? 'a function';
}
