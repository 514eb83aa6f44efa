/** What the bench puts into the page; each function is sent there as it stands. */

/** From the key to the frame after the last change of the drawing, and what was changed on the way. */
export function listenToKeys() {
  const lists = {};
  let start = 0;
  let last = Number.NaN;
  let recorded = null;
  // Before all that waits for the frame to be over: it is no part of it.
  const afterFrame = (then) =>
    requestAnimationFrame(() => {
      void scheduler.postTask(then, { priority: 'user-blocking' });
    });
  addEventListener(
    'keydown',
    (event) => {
      start = event.timeStamp;
      for (const write of lists[event.key] ?? []) write();
    },
    true,
  );
  new MutationObserver((records) => {
    const element = ({ target }) => (target instanceof Element ? target : target.parentElement);
    if (recorded !== null) recorded.push(...records);
    if (!records.some((record) => element(record)?.closest('.elevation'))) return;
    const from = start;
    afterFrame(() => {
      if (from === start) last = performance.now() - from;
    });
  }).observe(document.body, { subtree: true, attributes: true, characterData: true, childList: true });
  window.heardByBench = {
    forget: () => {
      last = Number.NaN;
    },
    painted: () => last,
    record: () => {
      recorded = [];
    },
    /** What has been recorded, as writes that a key does by itself. */
    keep(key) {
      lists[key] = recorded
        .filter(({ type }) => type !== 'childList')
        .map(({ type, target, attributeName }) => {
          if (type !== 'attributes') return [target, null, target.data];
          return [target, attributeName, target.getAttribute(attributeName)];
        })
        .map(([target, name, value]) => () => {
          if (name === null) target.data = value;
          else if (value === null) target.removeAttribute(name);
          else target.setAttribute(name, value);
        });
      recorded = null;
      return lists[key].length;
    },
  };
}

/** @returns how many writes the key now does */
export function rawKeys(key) {
  return window.heardByBench.keep(key);
}

/** Lengths of the frames between two moments. */
export function watchFrames() {
  let times = [];
  let isOn = false;
  const tick = (time) => {
    if (!isOn) return;
    times.push(time);
    requestAnimationFrame(tick);
  };
  window.framesOfBench = {
    begin() {
      times = [];
      isOn = true;
      requestAnimationFrame(tick);
    },
    end() {
      isOn = false;
      return times.slice(1).map((time, i) => time - times[i]);
    },
  };
}

/** Tasks of the page itself that took over 50 milliseconds. */
export function watchLongTasks() {
  let longest = 0;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) longest = Math.max(longest, duration);
  }).observe({ type: 'longtask' });
  window.longestOfBench = () => longest;
}

/** From the key to the first word of the search and to its last change, and the longest frame until then. */
export function listenToAnswers() {
  let start = 0;
  let found = { first: Number.NaN, all: Number.NaN, frames: 1 };
  addEventListener(
    'keydown',
    (event) => {
      start = event.timeStamp;
      found = { first: Number.NaN, all: Number.NaN, frames: 1 };
      let last = null;
      const tick = (time) => {
        if (last !== null) found.frames = Math.max(found.frames, (time - last) / (1000 / 60));
        last = time;
        if (time - start < 300) requestAnimationFrame(tick);
      };
      requestAnimationFrame(tick);
    },
    true,
  );
  const within = ({ target }, place) =>
    (target instanceof Element ? target : target.parentElement)?.closest(place) !== null;
  new MutationObserver((records) => {
    const from = start;
    const said = records.some((record) => within(record, '.search p[aria-live]'));
    const drawn = records.some((record) => within(record, '.search-places, .search-list'));
    if (!said && !drawn) return;
    requestAnimationFrame(() => {
      void scheduler.postTask(
        () => {
          if (from !== start) return;
          const now = performance.now() - from;
          if (said && Number.isNaN(found.first)) found.first = now;
          found.all = now;
        },
        { priority: 'user-blocking' },
      );
    });
  }).observe(document.body, { subtree: true, characterData: true, childList: true, attributes: true });
  window.answersOfBench = () => found;
}
