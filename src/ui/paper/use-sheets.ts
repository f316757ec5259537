import { useSyncExternalStore } from 'react';
import { onSheets, type SheetsNow, sheetsNow } from './sheets-now.ts';

export const useSheets = (): SheetsNow => useSyncExternalStore(onSheets, sheetsNow);
