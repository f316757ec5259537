import { useEffect, useState } from 'react';

/** Keeps the screen on while someone sews, where the browser can. */
export const KeepAwake = () => {
  const [on, setOn] = useState(false);
  const [refused, setRefused] = useState(false);
  useEffect(() => (on ? holdAwake(() => setRefused(true)) : undefined), [on]);
  if (!('wakeLock' in navigator)) return null;
  return (
    <label className="check">
      <input
        type="checkbox"
        checked={on && !refused}
        onChange={(event) => {
          setRefused(false);
          setOn(event.target.checked);
        }}
      />
      Keep the screen on
      {refused && <span className="help"> The browser does not allow it just now.</span>}
    </label>
  );
};

/** Asks for the lock, again each time the page comes back into view. Returns how to let go. */
const holdAwake = (onRefused: () => void): (() => void) => {
  let lock: WakeLockSentinel | null = null;
  let over = false;
  const ask = async () => {
    if (document.visibilityState !== 'visible') return;
    try {
      const got = await navigator.wakeLock.request('screen');
      if (over) await got.release();
      else lock = got;
    } catch {
      if (!over) onRefused();
    }
  };
  document.addEventListener('visibilitychange', ask);
  void ask();
  return () => {
    over = true;
    document.removeEventListener('visibilitychange', ask);
    void lock?.release();
  };
};
