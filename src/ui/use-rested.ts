import { useEffect, useState } from 'react';

/** The value, once it has stayed the same for a while. With no wait it is the value itself. */
export const useRested = <T>(value: T, wait: number): T => {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setRested(value), wait);
    return () => clearTimeout(timer);
  }, [value, wait]);
  return wait > 0 ? rested : value;
};
