import { type ComponentType, useEffect, useState } from 'react';

/** A part of the screen that is fetched behind the first view. */
export interface Part<P> {
  /** Fetches it ahead of being shown. Resolves when it is there, or when it could not be had. */
  readonly fetch: () => Promise<void>;
  /** The part, once it is there. */
  readonly now: () => ComponentType<P> | null;
}

export const part = <P,>(load: () => Promise<ComponentType<P>>): Part<P> => {
  let loaded: ComponentType<P> | null = null;
  let fetching: Promise<void> | null = null;
  const fetch = (): Promise<void> => {
    fetching ??= load().then(
      (component) => {
        loaded = component;
      },
      () => {
        // Perhaps the next try finds the way.
        fetching = null;
      },
    );
    return fetching;
  };
  return { fetch, now: () => loaded };
};

/** Shows a part at once if it is there, else as soon as it is; where it cannot be fetched it says so. */
export const Fetched = <P extends object>({
  part,
  with: props,
}: {
  readonly part: Part<P>;
  readonly with: P;
}) => {
  const [tried, setTried] = useState<Part<P> | null>(null);
  const Component = part.now();
  const missing = Component === null;
  useEffect(() => {
    // It may have come since it was found missing: this is told all the same.
    if (missing) void part.fetch().then(() => setTried(part));
  }, [part, missing]);
  if (Component !== null) return <Component {...props} />;
  if (tried !== part) return null;
  return <p className="remark">This part could not be fetched. Please reload the page.</p>;
};
