import { parseSync, Visitor } from 'vite';

/** What one source file names as its imports, in order: values, types, re-exports, lazy loads, workers. */
export const importsOf = (name: string, text: string): readonly string[] => {
  const { program, errors } = parseSync(name, text);
  if (errors.length > 0) throw new Error(`cannot read ${name}: ${errors[0]?.message}`);
  const found: string[] = [];
  const note = (source: Named | null | undefined) => {
    if (typeof source?.value === 'string') found.push(source.value);
  };
  new Visitor({
    ImportDeclaration: (node) => note(node.source),
    ExportNamedDeclaration: (node) => note(node.source),
    ExportAllDeclaration: (node) => note(node.source),
    ImportExpression: (node) => note(lettersOf(node.source)),
    TSImportType: (node) => note(node.source),
    NewExpression: (node) => {
      // A worker is named by its address: new URL('./pdf-worker.ts', import.meta.url).
      const [address, base] = node.arguments;
      const isUrl = node.callee.type === 'Identifier' && node.callee.name === 'URL';
      const isHere = base?.type === 'MemberExpression' && base.object.type === 'MetaProperty';
      if (isUrl && isHere && address) note(lettersOf(address));
    },
  }).visit(program);
  return found;
};

interface Named {
  readonly value?: unknown;
}

/** A module that is named by a sum or a template could be any: the layers could not be told. */
const lettersOf = (node: { readonly type: string }): Named => {
  if (node.type !== 'Literal') throw new Error('a module must be named in plain letters');
  return node as Named;
};
