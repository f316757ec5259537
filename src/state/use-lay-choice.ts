import { useShallow } from 'zustand/react/shallow';
import type { LayChoice } from './lay-choice.ts';
import { layOf } from './lay-of.ts';
import { useStudio } from './studio.ts';

export const useLayChoice = (): LayChoice => useStudio(useShallow(layOf));
