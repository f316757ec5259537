/** Hands on the first value at once, and from then on the latest once no other has come for a while, ms. */
export const atRest = <T>(act: (value: T) => void, wait: number) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isFirst = true;
  return {
    push: (value: T): void => {
      clearTimeout(timer);
      if (isFirst) act(value);
      else timer = setTimeout(() => act(value), wait);
      isFirst = false;
    },
    stop: (): void => clearTimeout(timer),
  };
};
