import { useSyncExternalStore } from 'react';
import { type LayNow, layNow, onLay } from './lay-now.ts';

export const useLay = (): LayNow => useSyncExternalStore(onLay, layNow);
