import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import type { Stage } from '../../state/stage.ts';
import { CapStage } from './CapStage.tsx';

/** The stages that a first visit does not open are fetched when they are walked up to. */
const fetchers = {
  head: () => import('./HeadStage.tsx').then((m) => ({ default: m.HeadStage })),
  cloth: () => import('./ClothStage.tsx').then((m) => ({ default: m.ClothStage })),
  paper: () => import('./PaperStage.tsx').then((m) => ({ default: m.PaperStage })),
  sewing: () => import('./SewingStage.tsx').then((m) => ({ default: m.SewingStage })),
};

export const forms: Readonly<Record<Stage, ComponentType | LazyExoticComponent<ComponentType>>> = {
  head: lazy(fetchers.head),
  cap: CapStage,
  cloth: lazy(fetchers.cloth),
  paper: lazy(fetchers.paper),
  sewing: lazy(fetchers.sewing),
};

/** Fetches a stage's form ahead of its being opened. */
export const fetchForm = (stage: Stage): void => {
  if (stage !== 'cap') void fetchers[stage]();
};
