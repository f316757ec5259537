import { useLayoutEffect, useSyncExternalStore } from 'react';
import type { Theme } from '../state/state.ts';
import { useStudio } from '../state/studio.ts';

const darkSystem = () => matchMedia('(prefers-color-scheme: dark)');

/** Whether the device asks for dark, and follows it when it changes. */
export const useDarkSystem = (): boolean =>
  useSyncExternalStore(
    (changed) => {
      const query = darkSystem();
      query.addEventListener('change', changed);
      return () => query.removeEventListener('change', changed);
    },
    () => darkSystem().matches,
  );

export const isDark = (theme: Theme, system: boolean): boolean =>
  theme === 'system' ? system : theme === 'dark';

/** Hangs the light on the page, where styles and the table find it. */
export const useTheme = (): void => {
  const theme = useStudio((s) => s.theme);
  const dark = isDark(theme, useDarkSystem());
  useLayoutEffect(() => {
    document.documentElement.dataset.light = dark ? 'dark' : 'light';
  }, [dark]);
};
