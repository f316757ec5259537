import { onTestFinished, vi } from 'vitest';

/** A browser's keeping, as much of it as is used, for one test: it leaves neither keeping nor a stopped clock to the next. */
export const keepIn = (kept: Map<string, string>): void => {
  onTestFinished(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => kept.set(name, text),
    removeItem: (name: string) => kept.delete(name),
  });
};

/** The studio as after opening the page: whatever was kept is there, nothing else is. */
export const openStudio = async () => {
  vi.resetModules();
  const { useStudio, past, wake } = await import('../../src/state/studio.ts');
  await wake();
  const actions = await import('../../src/state/actions.ts');
  const ofCap = await import('../../src/state/cap-actions.ts');
  const ofHeads = await import('../../src/state/heads.ts');
  return { ...actions, ...ofCap, ...ofHeads, past, now: useStudio.getState };
};
