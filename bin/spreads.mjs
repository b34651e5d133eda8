// Object literals that spread something, as calls of Object.assign: in the engine of Node 20 a key added behind a spread makes a new hidden class
// each time it runs, which costs half a microsecond and leaves garbage that only a full collection frees: a tenth of a batch. The source stays as people read it.
import ts from 'typescript'

const OPTIONS = { target: ts.ScriptTarget.ESNext, module: ts.ModuleKind.ESNext, isolatedModules: true, removeComments: true }
const isAssigned = (node, parent) => ts.isBinaryExpression(parent) && parent.operatorToken.kind === ts.SyntaxKind.EqualsToken && parent.left === node

function assigning(context) {
  const { factory } = context
  const visit = node => {
    if (!ts.isObjectLiteralExpression(node) || node.properties.length < 2 || !node.properties.some(ts.isSpreadAssignment) || node.properties.some(ts.isAccessor) || isAssigned(node, node.parent)) return ts.visitEachChild(node, visit, context)
    const parts = [[]]
    for (const property of node.properties) {
      if (ts.isSpreadAssignment(property)) parts.push(ts.visitNode(property.expression, visit), [])
      else parts.at(-1).push(ts.visitNode(property, visit))
    }
    const [first, ...rest] = parts.map(part => (Array.isArray(part) ? factory.createObjectLiteralExpression(part) : part))
    return factory.createCallExpression(factory.createPropertyAccessExpression(factory.createIdentifier('Object'), 'assign'), undefined, [first, ...rest.filter(arg => !ts.isObjectLiteralExpression(arg) || arg.properties.length > 0)])
  }
  return file => ts.visitEachChild(file, visit, context)
}

/** A source file as JavaScript, with these calls. */
export const assigned = (text, fileName) => ts.transpileModule(text, { fileName, compilerOptions: OPTIONS, transformers: { before: [assigning] } }).outputText
