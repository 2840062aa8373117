import { useEffect } from 'preact/hooks';

/** Keeps the screen on while a round is played, where the browser can; taken anew whenever the page comes back. */
export function useWakeLock(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return undefined;
    let lock: WakeLockSentinel | null = null;
    let isOver = false;
    const take = async () => {
      if (document.visibilityState !== 'visible' || (lock && !lock.released)) return;
      try {
        const taken = await navigator.wakeLock.request('screen');
        if (isOver) await taken.release();
        else lock = taken;
      } catch (error) {
        // A phone low on power refuses; the round goes on with the screen's own time-out.
        console.error('the screen will not be kept on', error);
      }
    };
    void take();
    document.addEventListener('visibilitychange', take);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', take);
      void lock?.release();
    };
  }, [isWanted]);
}
