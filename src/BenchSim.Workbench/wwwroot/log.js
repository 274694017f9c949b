// What was done goes to the log one entry after the other. While the server does not answer, entries wait here, also over a reload, and
// are sent once it does; each has a name of its own, so that none counts twice.
import { NOT_PAIRED, say, set, store } from "./store.js";

const KEPT = "benchsim-waiting";
const AGAIN = 3000; // milliseconds until the server is asked again

const read = () => {
  try {
    return JSON.parse(localStorage.getItem(KEPT)) ?? [];
  } catch {
    return [];
  }
};

const keep = (waiting) => {
  localStorage.setItem(KEPT, JSON.stringify(waiting));
  set({ waiting });
};

const name = () => [...crypto.getRandomValues(new Uint8Array(12))].map((each) => each.toString(16).padStart(2, "0")).join("");

/**
 * Writes lines into the log, all or none.
 * @param {string} said What was done, in a few words.
 * @param {Object<string, string>[]} rows The cells of each line by column.
 */
export function write(said, rows) {
  keep([...read(), { id: name(), said, rows, folder: store.desk.folder }]);
  send();
}

/** Takes lines out of the log again. */
export async function takeBack({ id, said }) {
  const answer = await post("/api/log/back", { id }).catch(() => null);
  if (!answer) {
    say("The workbench does not answer. Try it again when it does.", true);
  } else if (answer.ok) {
    set({ desk: await answer.json() });
    say(`Taken back: ${said}`);
  } else {
    say((await answer.json()).why, true);
  }
}

const post = (path, body) =>
  fetch(path, { method: "POST", credentials: "same-origin", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) });

let isSending = false;

/** Sends what waits, in its order. */
export async function send() {
  if (isSending) {
    return;
  }
  isSending = true;
  try {
    for (let first = read()[0]; first; first = read()[0]) {
      if (first.folder !== store.desk?.folder) {
        return; // it is of another folder, and waits for that one
      }
      const answer = await post("/api/log", { id: first.id, said: first.said, rows: first.rows }).catch(() => null);
      if (!answer || answer.status >= 500) {
        setTimeout(send, AGAIN);
        return;
      }
      if (answer.status === NOT_PAIRED) {
        location.reload(); // it waits until this phone is paired again
        return;
      }
      keep(read().filter((each) => each.id !== first.id));
      if (answer.ok) {
        set({ desk: await answer.json(), isLost: false, written: [...store.written, first] });
        say(`Written down: ${first.said}`);
      } else {
        const json = answer.headers.get("Content-Type")?.startsWith("application/json");
        say(`${first.said}: ${json ? (await answer.json()).why : await answer.text()}`, true);
      }
    }
  } finally {
    isSending = false;
  }
}

/** What waits to be sent, and tries to send it. */
export function begin() {
  set({ waiting: read() });
  send();
}
