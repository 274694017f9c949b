// Why a batch is late or a space is full: asked of the server for the plan that is looked at, and told below the bar or strip it is of.
import { html, useEffect, useRef, useState } from "./view.js";
import { get, set, store } from "./store.js";
import { dayWords } from "./dates.js";

/**
 * Opens the answer below a bar or a strip; of the one that is open, closes it.
 * @param {{batch: string} | {space: string, day: number}} of What it is of.
 */
export function askWhy(of) {
  const isOpen = store.why && store.why.batch === of.batch && store.why.space === of.space && store.why.day === of.day;
  set({ why: isOpen ? null : { ...of, opener: document.activeElement }, marks: null });
}

/** Whether the answer of a batch or a space is open. */
export const isWhyOf = (of) => Boolean(store.why) && (of.batch ? store.why.batch === of.batch : store.why.space === of.space);

const pathOf = ({ batch, space, day }) =>
  "/api/why?" + new URLSearchParams(batch === undefined ? { space, day } : { batch });

export function Why({ answer }) {
  const of = store.why;
  const [told, setTold] = useState(null);
  const head = useRef(null);
  const path = pathOf(of);
  const newest = store.answer;
  // Asked anew for a new plan and for its last answer, not for those of a hand that still drags.
  const state = newest && !newest.isLive && !newest.faults.length ? `${newest.revision} ${newest.isLast}` : "waits";
  useEffect(() => head.current?.focus({ preventScroll: true }), [path]);
  useEffect(() => {
    if (state === "waits") {
      return undefined;
    }
    const wanted = new AbortController();
    get(path, wanted.signal).then((found) => {
      // A plan that is still being played has no answer; it is asked again when it has.
      if (!wanted.signal.aborted && (found || store.desk.revision <= newest.revision)) {
        setTold({ path, found });
        set({ marks: found && of.space !== undefined ? { holds: found.holds, waits: found.waits, title: found.title } : null });
      }
    });
    return () => wanted.abort();
  }, [path, state]);
  const close = () => {
    of.opener?.focus?.({ preventScroll: true });
    set({ why: null, marks: null });
  };
  const shown = told?.path === path ? told : null;
  const week = (days) => set({ why: { ...of, day: Math.min(answer.days - 1, Math.max(0, of.day + days)) } });
  return html`<section class="why" aria-label="Why" aria-busy=${shown ? "false" : "true"} onKeyDown=${(event) => event.key === "Escape" && close()}>
    <h3 tabindex="-1" ref=${head}>${shown?.found?.title ?? (shown ? "No longer in the plan" : "Looking through the seasons …")}</h3>
    ${shown?.found ? html`<${Told} found=${shown.found} />` : null}
    <p class="doings">
      ${of.space !== undefined ? html`
        <button type="button" disabled=${of.day < 7} onClick=${() => week(-7)}>The week before</button>
        <button type="button" disabled=${of.day + 7 >= answer.days} onClick=${() => week(7)}>The week after</button>` : null}
      ${shown?.found?.row >= 0
        ? html`<button type="button" onClick=${() => set({ part: "plan", focus: { row: shown.found.row, cell: "sow" } })}>Show its line in the plan</button>`
        : null}
      <button type="button" onClick=${close}>Close</button>
    </p>
  </section>`;
}

function Told({ found }) {
  return html`
    <ul>${found.sentences.map((each, at) => html`<li key=${at}>${each}</li>`)}</ul>
    <div class="stories">
      ${found.stories.map(
        ({ heading, lines }) => html`<div key=${heading}>
          <h4>${heading}</h4>
          <ul>${lines.map((each, at) => html`<li key=${at}>${each}</li>`)}</ul>
        </div>`,
      )}
    </div>
  `;
}

/** What a batch is marked with: "holds", "waits", or nothing. */
export const markOf = (batch) =>
  store.marks?.waits.includes(batch.id) ? "waits" : store.marks?.holds.includes(batch.id) ? "holds" : null;

/** Says what the marks of the bars are of. */
export const Marks = () =>
  store.marks
    ? html`<p class="lit" role="status">${store.marks.title}, in the seasons told above: ■ holds places there, ▲ waits for one.
        <button type="button" onClick=${() => set({ marks: null })}>Clear</button></p>`
    : null;

/** The heading of a red week, for whoever does not see it. */
export const weekWords = (space, firstDay, from, to) =>
  `Why trays wait for ${space.name}, ${dayWords(firstDay, from)}${to > from ? ` to ${dayWords(firstDay, to)}` : ""}`;
