import { existsSync, readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import type { Reporter, TestCase, TestResult } from 'playwright/types/testReporter';
import { type Figure, notedIn } from './figures.ts';
import { UNIT_TIMES } from './unit-times.ts';
import { figuresOfUnits } from './units.ts';

/** Prints every figure of the run as one plain table: those of the units first, then those of the page. */
export default function table(): Reporter {
  const figures: Figure[] = [];
  const failed: string[] = [];
  return {
    printsToStdio: () => true,
    onError: ({ message }) => failed.push(message ?? 'an error'),
    onTestEnd: ({ title }: TestCase, { status, error, annotations }: TestResult) => {
      figures.push(...notedIn(annotations));
      if (status !== 'passed') failed.push(`${title}: ${error?.message ?? status}`);
    },
    onEnd: () => {
      const units = existsSync(UNIT_TIMES)
        ? figuresOfUnits(JSON.parse(readFileSync(UNIT_TIMES, 'utf8')))
        : [];
      console.log(`\n${machine()}\n\n${lines([...units, ...figures]).join('\n')}\n`);
      for (const message of failed) console.error(message);
    },
  };
}

const machine = (): string =>
  `${new Date().toISOString().slice(0, 10)}, ${cpus().length} cores, Node ${process.versions.node}`;

const HEADS = ['what', 'median', '95 %', 'ratio', 'against', 'wanted', ''];

const lines = (figures: readonly Figure[]): string[] => {
  const rows = [HEADS, ...figures.map(row)];
  const widths = HEADS.map((_, column) => Math.max(...rows.map((r) => r[column]!.length)));
  return rows.map((r) =>
    r
      .map((cell, i) => (i >= 1 && i <= 3 ? cell.padStart(widths[i]!) : cell.padEnd(widths[i]!)))
      .join('  ')
      .trimEnd(),
  );
};

const row = ({ subject, median, high, unit, against, wanted = '', met }: Figure): string[] => [
  subject,
  `${figure(median)} ${unit}`,
  high === undefined ? '' : `${figure(high)} ${unit}`,
  against === undefined ? '' : `${figure(against.ratio)}×`,
  against?.name ?? '',
  wanted,
  met === undefined ? '' : met ? 'met' : 'missed',
];

/** Three figures are more than a repeated run agrees on. */
const figure = (n: number): string => (n >= 100 ? n.toFixed(0) : n >= 10 ? n.toFixed(1) : n.toFixed(2));
