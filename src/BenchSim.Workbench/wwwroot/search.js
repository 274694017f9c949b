// What searches that run beside the page have in common: how far they are, how to stop them, and of which plan they are.
import { html } from "./view.js";
import { act } from "./store.js";

/** Whether a search runs and how far it is, by the last event and by what was asked last (Showing/SearchProgress.cs). */
export function searching(told, search) {
  const isRunning = told?.isRunning ?? search?.isRunning ?? false;
  return { isRunning, done: Math.max(told?.done ?? 0, isRunning ? (search?.done ?? 0) : 0) };
}

export const Stop = ({ search, at }) => (search.isRunning ? html`<button type="button" onClick=${() => act(at, {}, "Stopped")}>Stop</button>` : null);

export const Progress = ({ search }) =>
  search.isRunning
    ? html`<p class="searching"><progress max="100" value=${search.done} aria-label="How far the search is"></progress> ${search.done} % of the search is done</p>`
    : null;

/** Why nothing was found; nothing where there is no trouble. */
export function Trouble({ search }) {
  if (search.faults.length) {
    return html`<p class="flag">Nothing could be looked for:</p>
      <ul>${search.faults.map((fault, at) => html`<li key=${at}>${fault.file}${fault.line ? `, line ${fault.line}` : ""}: ${fault.what}; ${fault.instead}</li>`)}</ul>`;
  }
  return search.failure ? html`<p class="trouble" role="alert">${search.failure}</p>` : null;
}

export const otherPlan = (search) => (search.isOfNow ? "" : " What you look at now is another plan: look again for that one.");
