// What the page knows, and its talk with the server. The server's desk is the state; nothing here outlives a reload.

/**
 * @typedef {{do: string, file?: string, row?: number, column?: string, section?: string, entry?: number, key?: string, was?: string,
 *   value?: string, values?: Object<string, string>}} Change One change of the texts (Drafts/Change.cs).
 */

export const store = {
  desk: null, // what is on the desk (Showing/DeskDocument.cs)
  fields: null, // keys and columns by section (Showing/FieldDocument.cs)
  answer: null, // the newest answer (Showing/AnswerDocument.cs)
  last: null, // the newest answer that has seasons: shown pale while there are faults
  part: "sheet", // the part of the page that is open
  message: "", // said to whoever looks or listens
  isTrouble: false,
  isLost: false, // the server does not answer
  focus: null, // the cell or field to go to
  phones: 0, // how often a phone came or went, or the code changed
  opens: 0, // how often it has begun to listen: what was told meanwhile has been missed
  mend: null, // how far the search for what would mend the plan is (Showing/SearchProgress.cs)
  trust: null, // how far the search for how sure the answer is has come
  why: null, // the batch, or the space and day, of which is told why (why.js)
  written: [], // entries of the log that the benches shown do not tell yet
  waiting: [], // entries of the log that wait to be sent (log.js)
  marks: null, // the batches that hold places of that space then, and those that wait
};

// What this page has changed and no answer tells yet, by its place: whoever changes it again goes on from there.
const ahead = new Map();
const placeOf = (change) => JSON.stringify([change.row, change.column, change.section, change.entry, change.key]);
let waiting = 0; // edits that are not acknowledged yet

/**
 * What stands at the place of a change, where this page changed it and no answer tells it yet.
 * @param {Change} change
 * @returns {string | undefined}
 */
export const aheadOf = (change) => ahead.get(placeOf(change));

/** Marks a moment for whoever measures the page; the last of each name is kept. */
export function mark(name, detail) {
  performance.clearMarks(name);
  performance.mark(name, { detail });
}

const watchers = new Set();

const EDIT = "/api/edit";

/** The owner has taken this phone away: its first page is then the one on which a code is typed. */
export const NOT_PAIRED = 401;

/** @param {() => void} watcher Called after each change. */
export function watch(watcher) {
  watchers.add(watcher);
  return () => watchers.delete(watcher);
}

/** @param {object} part What changes. */
export function set(part) {
  Object.assign(store, part);
  watchers.forEach((watcher) => watcher());
}

/** Says something in the line below the verdict. */
export const say = (message, isTrouble = false) => set({ message, isTrouble });

async function ask(path, options) {
  try {
    const answer = await fetch(path, { credentials: "same-origin", ...options });
    set({ isLost: false });
    if (answer.status === NOT_PAIRED) {
      location.reload();
    }
    return answer;
  } catch {
    // Nobody waits for an answer that is no longer wanted.
    set({ isLost: store.isLost || !options?.signal?.aborted });
    return null;
  }
}

/**
 * What stands at an address of the server; null where it gives nothing.
 * @param {string} path Address.
 * @param {AbortSignal} [signal] Tells that it is no longer wanted.
 */
export async function get(path, signal) {
  const answer = await ask(path, { signal });
  try {
    return answer?.ok ? await answer.json() : null;
  } catch (broken) {
    // What is no longer wanted may be broken off in the middle.
    if (signal?.aborted) {
      return null;
    }
    throw broken;
  }
}

const send = (path, body) => ask(path, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) });

export async function look() {
  const desk = await get("/api/desk");
  if (desk && (!store.desk || desk.revision >= store.desk.revision || desk.folder !== store.desk.folder)) {
    set({ desk });
  }
}

// One after the other: a change builds on the one before. What a hand tries while it drags stands in the same line, since it would be
// refused if it came in after the change that the hand made when it let go.
let line = Promise.resolve();

function inLine(job) {
  const done = line.then(job);
  line = done.catch(() => null);
  return done;
}

/**
 * Asks for something to be done.
 * @param {string} path Address.
 * @param {object} body What.
 * @param {string} [done] Said when it was.
 * @returns {Promise<boolean>} Whether it was done.
 */
export function act(path, body, done = "") {
  return inLine(async () => {
    const answer = await send(path, body);
    if (!answer?.ok || path !== EDIT) {
      ahead.clear();
    }
    if (!answer) {
      return false;
    }
    if (answer.ok) {
      const desk = await answer.json();
      set({ desk, message: desk.said ?? done, isTrouble: false });
      return true;
    }
    const refusal = answer.headers.get("Content-Type")?.startsWith("application/json") ? (await answer.json()).why : await answer.text();
    say(refusal, true);
    await look();
    return false;
  });
}

/**
 * Makes changes, as one step.
 * @param {string} what What is changed, in a few words.
 * @param {Change[]} changes The changes.
 */
export async function edit(what, changes) {
  if (changes.length === 0) {
    return true;
  }
  mark("input");
  if (changes.some((change) => change.value === undefined)) {
    ahead.clear(); // rows or entries move up or down
  } else {
    changes.forEach((change) => ahead.set(placeOf(change), change.value));
  }
  set({});
  waiting++;
  try {
    return await act(EDIT, { what, changes }, what);
  } finally {
    waiting--;
  }
}

// While a hand still drags, one change is under way, and the newest one goes next.
let isUnderWay = false;
let newest = null;

/** Plays changes that are not made yet; none of them to go back to what is. */
export async function live(changes) {
  mark("input");
  newest = changes;
  if (isUnderWay) {
    return;
  }
  isUnderWay = true;
  while (newest) {
    await inLine(async () => {
      const next = newest;
      newest = null;
      return next && send("/api/live", { what: "", changes: next });
    });
  }
  isUnderWay = false;
}

/** Forgets a change that waits to be played. */
export const settle = () => {
  newest = null;
};

// What is drawn the same as before stays the same object, so that it is not drawn anew.
let drawn = new Map();

function kept(answer) {
  const now = new Map();
  const same = (kind) => (each) => {
    const [key, text] = [`${kind} ${each.id}`, JSON.stringify(each)];
    const before = drawn.get(key);
    now.set(key, before?.text === text ? before : { text, each });
    return now.get(key).each;
  };
  answer.spaces = answer.spaces.map(same("space"));
  answer.batches = answer.batches.map(same("batch"));
  drawn = answer.seasons > 0 ? now : drawn;
  return answer;
}

let source = null;

function listen() {
  source?.close();
  source = new EventSource("/api/events");
  source.addEventListener("answer", (event) => {
    const answer = kept(JSON.parse(event.data));
    if (waiting === 0 && answer.revision >= store.desk?.revision) {
      ahead.clear();
    }
    set({ answer, last: answer.seasons > 0 ? answer : store.last });
  });
  source.addEventListener("desk", (event) => {
    // A change of this page brings the desk with its own answer.
    if (waiting === 0 && (!store.desk || JSON.parse(event.data).revision > store.desk.revision)) {
      look();
    }
  });
  source.addEventListener("mend", (event) => set({ mend: JSON.parse(event.data) }));
  source.addEventListener("trust", (event) => set({ trust: JSON.parse(event.data) }));
  source.addEventListener("phones", () => set({ phones: store.phones + 1 }));
  source.onerror = () => {
    set({ isLost: true });
    if (store.desk?.isPhone && source.readyState === EventSource.CLOSED) {
      look();
    }
  };
  source.onopen = () => {
    set({ isLost: false, opens: store.opens + 1, mend: null, trust: null });
    look();
  };
}

/** Begins to listen. A page that nobody sees holds no line to the server. */
export async function start() {
  set({ fields: Object.fromEntries(((await get("/api/fields")) ?? []).map((each) => [each.section, each])) });
  await look();
  listen();
  document.addEventListener("visibilitychange", () => {
    if (document.hidden) {
      source?.close();
    } else {
      listen();
    }
  });
}
