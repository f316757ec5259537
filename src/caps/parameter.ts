/** Where a parameter stands on the Cap stage. */
export type ParameterGroup =
  | 'fit'
  | 'crown'
  | 'band'
  | 'visor'
  | 'brim'
  | 'back'
  | 'strap'
  | 'lining'
  | 'seams';

/** What a value must be: this, or one of these, or more than some number. */
export type Condition = string | boolean | readonly string[] | { readonly above: number };

interface Described {
  /** The control's accessible name: stable. */
  readonly label: string;
  /** One line of plain help: what the eye will see. */
  readonly help: string;
  readonly group: ParameterGroup;
  /** The row counts, and its control is shown, only while all these parameters are as said here and count themselves. */
  readonly when?: Readonly<Record<string, Condition>>;
}

interface Ranged extends Described {
  readonly min: number;
  readonly max: number;
  readonly default: number;
  /** The range most caps use, marked lightly on the track. */
  readonly usual?: readonly [number, number];
}

/** Millimetres. The step is what a sewist would move by: mm in cm, and a fraction of an inch in inches. */
export interface LengthParameter extends Ranged {
  readonly kind: 'length';
  readonly step: number;
  readonly inchStep: number;
}

/** Radians, shown in degrees. */
export interface AngleParameter extends Ranged {
  readonly kind: 'angle';
  readonly step: number;
}

/** A part of one, shown in percent. */
export interface RatioParameter extends Ranged {
  readonly kind: 'ratio';
  readonly step: number;
}

/** A whole number of things. */
export interface CountParameter extends Ranged {
  readonly kind: 'count';
  readonly step: 1;
}

/** Millimetres, or null to follow another parameter. */
export interface FollowingParameter extends Described {
  readonly kind: 'following';
  readonly follows: string;
  readonly min: number;
  readonly max: number;
  readonly default: null;
}

export interface ChoiceParameter extends Described {
  readonly kind: 'choice';
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly default: string;
}

export interface SwitchParameter extends Described {
  readonly kind: 'switch';
  readonly default: boolean;
}

/** A row of lengths, mm, as read off a ruler; may be empty. */
export interface RowParameter extends Described {
  readonly kind: 'row';
  readonly min: number;
  readonly max: number;
  readonly most: number;
  readonly default: readonly number[];
}

export type Parameter =
  | LengthParameter
  | AngleParameter
  | RatioParameter
  | CountParameter
  | FollowingParameter
  | ChoiceParameter
  | SwitchParameter
  | RowParameter;

export type ParameterTable = Readonly<Record<string, Parameter>>;

export type ParameterValue = number | string | boolean | null | readonly number[];

type ValueOf<P extends Parameter> = P extends { kind: 'length' | 'angle' | 'ratio' | 'count' }
  ? number
  : P extends { kind: 'following' }
    ? number | null
    : P extends { kind: 'switch' }
      ? boolean
      : P extends { kind: 'row' }
        ? readonly number[]
        : P extends ChoiceParameter
          ? P['options'][number]['value']
          : never;

/** The values a style's rule is given: one of the right type for each row of its table. */
export type ValuesOf<T extends ParameterTable> = { readonly [K in keyof T]: ValueOf<T[K]> };

export const defaultsOf = <T extends ParameterTable>(table: T): ValuesOf<T> =>
  Object.fromEntries(Object.entries(table).map(([key, p]) => [key, p.default])) as ValuesOf<T>;

/** The values of some style: its table says which rows there are. Rows of other styles may be among them, and are kept. */
export type Values = Readonly<Record<string, ParameterValue>>;

/** The values that a table has rows for: what a style may look at. */
export const rowsOf = (table: ParameterTable, values: Values): Values =>
  Object.fromEntries(
    Object.keys(table).flatMap((key) => (key in values ? [[key, values[key] ?? null]] : [])),
  );

/** Whether a row of the table counts and its control is to be shown, by the values of those it depends on. */
export const applies = (table: ParameterTable, key: string, values: Values): boolean =>
  Object.entries(table[key]?.when ?? {}).every(
    ([other, condition]) => holds(condition, values[other]) && applies(table, other, values),
  );

const holds = (condition: Condition, value: ParameterValue | undefined): boolean => {
  if (typeof condition !== 'object') return value === condition;
  if ('above' in condition) return typeof value === 'number' && value > condition.above;
  return condition.some((one) => one === value);
};
