// What `budgets.mjs` runs in the page.

/** How many times slower than this machine the phone is. */
export const SLOWER = 4;

/**
 * Runs before the app, with SLOWER: notes when the cook can be used, each tap and each long task, and
 * slows the second thread down.
 */
export function watch(slower) {
  const seen = { taps: new Map(), longest: 0, down: 0 };
  const note = (list) => {
    for (const entry of list) {
      if (entry.entryType === "longtask") seen.longest = Math.max(seen.longest, entry.duration);
      else if (entry.interactionId) {
        const before = seen.taps.get(entry.interactionId) ?? 0;
        seen.taps.set(entry.interactionId, Math.max(before, entry.duration));
      }
    }
  };
  const observer = new PerformanceObserver((list) => note(list.getEntries()));
  observer.observe({ type: "event", durationThreshold: 16, buffered: true });
  observer.observe({ type: "longtask", buffered: true });
  addEventListener("pointerup", () => (seen.down += 1), { capture: true });
  let tell;
  const started = new Promise((resolve) => (tell = resolve));
  const times = {};
  const painted = (what) => {
    requestAnimationFrame(() =>
      setTimeout(() => {
        times[what] = performance.now();
        if (what === "usable") tell(times);
      }),
    );
  };
  const look = () => {
    const rows = document.querySelectorAll(".piece .degrees").length;
    // As many as a phone's screen shows.
    if (rows >= 8 && !("rows" in times)) {
      times.rows = undefined;
      painted("rows");
    }
    // All pieces drawn, the forecast made, and the button for the next thing to do there.
    const there = document.querySelector(".next[aria-busy=false]") && document.querySelector(".dock .main-action");
    if (there && rows >= 20) {
      changes.disconnect();
      painted("usable");
    }
  };
  const changes = new MutationObserver(look);
  changes.observe(document, { subtree: true, childList: true, attributes: true });
  if (window.Worker) {
    window.Worker = class extends window.Worker {
      postMessage(message, ...more) {
        this.asked = performance.now();
        return super.postMessage(message, ...more);
      }
      set onmessage(hear) {
        super.onmessage = hear && ((event) => {
          const took = performance.now() - this.asked;
          setTimeout(() => hear.call(this, event), took * (slower - 1));
        });
      }
    };
  }
  window.measured = {
    started,
    /** The longest task since this was asked last, in milliseconds. */
    longest: async () => {
      await new Promise((later) => setTimeout(later, 100));
      note(observer.takeRecords());
      const { longest } = seen;
      seen.longest = 0;
      return longest;
    },
    /** How long each tap took until it was painted, in milliseconds. */
    taps: async () => {
      await new Promise((later) => setTimeout(later, 500));
      note(observer.takeRecords());
      const short = Array.from({ length: Math.max(0, seen.down - seen.taps.size) }, () => 16);
      return [...seen.taps.values(), ...short];
    },
  };
}
