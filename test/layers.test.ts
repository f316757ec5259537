import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { brokenRules, type Sources } from './house/layers.ts';
import { HOMES, LAYERS } from './house/rules.ts';

const root = join(import.meta.dirname, '..');

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'));

const house: Sources = new Map(
  filesUnder(join(root, 'src')).map((file) => [
    file,
    /\.tsx?$/.test(file) ? readFileSync(join(root, file), 'utf8') : '',
  ]),
);

/** A small house in order; a test puts one wrong thing into it. */
const sound = {
  'src/main.tsx': "import { App } from './ui/app.tsx';\nimport { createRoot } from 'react-dom/client';",
  'src/units.ts': '',
  'src/words.ts': "import type { Unit } from './units.ts';",
  'src/geometry/point.ts': '',
  'src/geometry/path.ts': "import type { Point } from './point.ts';",
  'src/head/girth.ts': "import type { Unit } from '../units.ts';",
  'src/pattern/piece.ts': "import type { Path } from '../geometry/path.ts';",
  'src/caps/form.ts': "import type { Piece } from '../pattern/piece.ts';",
  'src/drawing/drawing.ts': "import { piecesOf } from '../caps/form.ts';",
  'src/print/paper.ts': '',
  'src/print/pdf.ts': "import { drawn } from '../drawing/drawing.ts';\nimport('jspdf');",
  'src/design/spec.ts': "import type { PaperSpec } from '../print/paper.ts';",
  'src/state/store.ts': "import { create } from 'zustand';\nimport type { Spec } from '../design/spec.ts';",
  'src/ui/app.tsx': "import { useStore } from '../state/store.ts';\nimport './app.css';",
  'src/ui/app.css': '',
  'src/ui/table/table.ts': "import paper from 'paper/dist/paper-core';",
};

const rulesBrokenBy = (wrong: Readonly<Record<string, string>>): readonly string[] =>
  brokenRules(new Map(Object.entries({ ...sound, ...wrong })));

describe('the house', () => {
  it('has its files in view', () => {
    expect(house.has('src/main.tsx')).toBe(true);
    expect(house.has('src/geometry/path.ts')).toBe(true);
  });

  it('lets imports run one way only, has no barrels and no rings, and one home for each package', () => {
    expect(brokenRules(house)).toEqual([]);
  });

  it('puts each layer above all that it may import', () => {
    const order = Object.keys(LAYERS);
    for (const [layer, below] of Object.entries(LAYERS)) {
      for (const name of below) expect(LAYERS[name], `${layer} ◄ ${name}`).not.toContain(layer);
      expect(below.every((name) => order.includes(name))).toBe(true);
    }
  });

  it('gives a home only to packages that the project has', () => {
    const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    for (const parcel of Object.keys(HOMES))
      expect({ ...dependencies, ...devDependencies }).toHaveProperty([parcel]);
  });

  it('keeps nothing at the top but what belongs there', () => {
    const allowed = `package.json package-lock.json tsconfig.json vite.config.ts index.html
      README.md DEVELOPERS.md src public test e2e`.split(/\s+/);
    const passing = readFileSync(join(root, '.gitignore'), 'utf8').split(/\/?\n/);
    const stray = readdirSync(root).filter(
      (name) => !name.startsWith('.') && !allowed.includes(name) && !passing.includes(name),
    );
    expect(stray).toEqual([]);
  });
});

describe('the check of the layers', () => {
  it('finds nothing in a house that is in order', () => {
    expect(rulesBrokenBy({})).toEqual([]);
  });

  it.each([
    ['an import upward', 'src/geometry/arc.ts', "import { piece } from '../pattern/piece.ts';"],
    [
      'an import of a type upward',
      'src/geometry/arc.ts',
      "import type { Piece } from '../pattern/piece.ts';",
    ],
    ['a type named in place', 'src/geometry/arc.ts', "type P = import('../pattern/piece.ts').Piece;"],
    ['a re-export upward', 'src/geometry/arc.ts', "export { piece } from '../pattern/piece.ts';"],
    ['a whole re-export upward', 'src/geometry/arc.ts', "export * from '../pattern/piece.ts';"],
    ['a lazy import upward', 'src/geometry/arc.ts', "const p = () => import('../pattern/piece.ts');"],
    ['a worker above', 'src/state/keep.ts', "new Worker(new URL('../print/pdf.ts', import.meta.url));"],
    ['the head reading a cap', 'src/head/size.ts', "import { form } from '../caps/form.ts';"],
    ['the cloth reading a cap', 'src/cloth/lay.ts', "import { form } from '../caps/form.ts';"],
    ['the design printing', 'src/design/draft.ts', "import { pdf } from '../print/pdf.ts';"],
    ['a leaf that reads the geometry', 'src/units.ts', "import type { Point } from './geometry/point.ts';"],
    ['the paper table reading its folder', 'src/print/paper.ts', "import { pdf } from './pdf.ts';"],
  ])('finds %s', (_, file, text) => {
    const target = /'(\.[^']*)'/
      .exec(text)?.[1]
      ?.replace(/^\.+\//, 'src/')
      .replace('src/pdf', 'src/print/pdf');
    expect(rulesBrokenBy({ [file]: text })).toContain(`${file} may not import ${target}`);
  });

  it.each([
    [
      'react below the screen',
      'src/state/hook.ts',
      "import { useState } from 'react';",
      'may not import react:',
    ],
    ['the canvas outside the table', 'src/ui/app2.ts', "import p from 'paper';", 'may not import paper:'],
    ['a second writer of PDF', 'src/print/roll.ts', "import('jspdf');", 'may not import jspdf:'],
    [
      'a store outside the state',
      'src/ui/s.ts',
      "import { create } from 'zustand';",
      'may not import zustand:',
    ],
    [
      'a package without a home',
      'src/ui/s.ts',
      "import x from '@some/thing/deep';",
      '@some/thing, which has no home',
    ],
    ['a path without its ending', 'src/ui/s.ts', "import { S } from '../state/store';", 'no such file'],
    ['a barrel', 'src/geometry/index.ts', '', 'is a barrel file'],
    ['a stray file', 'src/helpers.ts', '', 'without a place in the layers'],
    ['a stray folder', 'src/helpers/sum.ts', '', 'the folder helpers has no place'],
    ['a ring', 'src/geometry/point.ts', "import type { Path } from './path.ts';", 'a ring of imports'],
    [
      'a file that imports itself',
      'src/geometry/a.ts',
      "import './a.ts';",
      'src/geometry/a.ts → src/geometry/a.ts',
    ],
  ])('finds %s', (_, file, text, sentence) => {
    const broken = rulesBrokenBy({ [file]: text });
    expect(broken).toHaveLength(1);
    expect(broken[0]).toContain(sentence);
  });

  it('is not misled by what only looks like an import', () => {
    const text = "// import '../ui/app.tsx'\nexport const s = \"import a from '../ui/app.tsx'\";";
    expect(rulesBrokenBy({ 'src/geometry/arc.ts': text })).toEqual([]);
  });

  it('refuses a module whose name cannot be read', () => {
    const text = "export const load = (name: string) => import('../' + name);";
    expect(() => rulesBrokenBy({ 'src/geometry/arc.ts': text })).toThrow('plain letters');
  });
});
