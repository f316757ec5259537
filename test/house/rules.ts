/** The folders of src and what each may import besides itself and the leaves. Nothing imports upward. */
export const LAYERS: Readonly<Record<string, readonly string[]>> = (() => {
  const pattern = ['geometry'];
  const head = ['geometry'];
  const caps = ['geometry', 'pattern', 'head'];
  const nesting = ['geometry'];
  const cloth = ['geometry', 'pattern', 'head', 'nesting'];
  const guide = [...caps, 'caps', 'nesting', 'cloth'];
  const worn = caps.concat('caps');
  const drawing = [...guide, 'worn'];
  const print = [...drawing, 'guide', 'drawing'];
  const files = print;
  const design = [...print, 'files'];
  const state = [...design, 'design'];
  const ui = [...state, 'state', 'print'];
  return {
    geometry: [],
    pattern,
    head,
    caps,
    nesting,
    cloth,
    guide,
    worn,
    drawing,
    print,
    files,
    design,
    state,
    ui,
  };
})();

/** Files that anyone may import. They import only each other. */
export const LEAVES: readonly string[] = ['src/units.ts', 'src/words.ts', 'src/print/paper.ts'];

/** Files that stand in src itself and see everything. */
export const ROOTS: readonly string[] = ['src/main.tsx', 'src/beside.d.ts'];

/** Where each package is at home: a folder (ending in '/') or a file. One dependency, one home. */
export const HOMES: Readonly<Record<string, readonly string[]>> = {
  react: ['src/ui/', 'src/main.tsx'],
  'react-dom': ['src/ui/', 'src/main.tsx'],
  zustand: ['src/state/'],
  zundo: ['src/state/'],
  paper: ['src/ui/table/'],
  ogl: ['src/ui/preview/'],
  'clipper2-ts': ['src/nesting/'],
  jspdf: ['src/print/pdf.ts'],
  '@fontsource-variable/source-sans-3': ['src/ui/', 'src/main.tsx'],
  '@expo-google-fonts/source-sans-3': ['src/print/'],
};
