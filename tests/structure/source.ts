// The source as text and as syntax, for rules that hold for all of it.
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import ts from 'typescript'

export const root = join(import.meta.dirname, '../..')

/** Files under a folder of the repository, by name from its root, in one order everywhere. */
export function filesIn(folder: string, ends: RegExp): string[] {
  const at = join(root, folder)
  if (!existsSync(at)) return []
  return readdirSync(at, { recursive: true, withFileTypes: true }).filter(e => e.isFile() && ends.test(e.name)).map(e => relative(root, join(e.parentPath, e.name)).replaceAll('\\', '/')).sort()
}

export const text = (file: string): string => readFileSync(join(root, file), 'utf8')
export const parsed = (file: string): ts.SourceFile => ts.createSourceFile(file, text(file), ts.ScriptTarget.Latest, true)
export const sources = filesIn('src', /\.ts$/)
export const lineOf = (node: ts.Node): number => node.getSourceFile().getLineAndCharacterOfPosition(node.getStart()).line + 1
export const lineText = (node: ts.Node): string => node.getSourceFile().text.split('\n')[lineOf(node) - 1]!.trim()

export interface Import { readonly file: string; readonly line: number; readonly from: string; /** In the repository: the file meant. */ readonly to?: string }

/** What a file imports or passes on. */
export function imports(file: string): Import[] {
  const out: Import[] = []
  const add = (spec: ts.Expression | undefined): void => {
    if (!spec || !ts.isStringLiteral(spec)) return
    const from = spec.text
    out.push({ file, line: lineOf(spec), from, ...(from.startsWith('.') ? { to: relative(root, join(root, dirname(file), from)).replaceAll('\\', '/') } : {}) })
  }
  const visit = (n: ts.Node): void => {
    if (ts.isImportDeclaration(n) || ts.isExportDeclaration(n)) add(n.moduleSpecifier)
    else if (ts.isCallExpression(n) && n.expression.kind === ts.SyntaxKind.ImportKeyword) add(n.arguments[0])
    else if (ts.isImportTypeNode(n) && ts.isLiteralTypeNode(n.argument)) add(n.argument.literal)
    ts.forEachChild(n, visit)
  }
  visit(parsed(file))
  return out
}
