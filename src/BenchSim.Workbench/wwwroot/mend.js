// What would mend the plan: the search of benchsim mend on the plan that is looked at, and what it found, ready to be taken as a try.
import { html, useEffect, useState } from "./view.js";
import { act, get, set, store } from "./store.js";
import { otherPlan, Progress, searching, Stop, Trouble } from "./search.js";

export function Mend() {
  const [found, setFound] = useState(null);
  const [marked, setMarked] = useState(0);
  const [goal, setGoal] = useState("90");
  useEffect(() => {
    let isWanted = true;
    get("/api/mend").then((each) => isWanted && each && setFound(each));
    return () => {
      isWanted = false;
    };
  }, [store.mend?.isRunning, store.opens, store.desk.revision, marked]);
  const search = searching(store.mend, found?.search);
  const start = (event) => {
    event.preventDefault();
    set({ mend: { isRunning: true, done: 0 } });
    act("/api/mend/start", { goal: Number(goal) }).then((isDone) => isDone || set({ mend: null }));
  };
  const mark = (point, isHere) =>
    act("/api/mend/mark", { mark: point, isHere }, isHere ? `No longer marked: ${point}` : `Marked as not here: ${point}`).then(() => setMarked(marked + 1));
  return html`
    <h2>What would mend it</h2>
    <p>Tries changes of the plan you look at, what costs nothing to buy first, on seasons that are the same for all. It takes a minute or
      two and runs beside the page, which goes on answering meanwhile.</p>
    <form class="add" onSubmit=${start}>
      <label>Share of seasons in which it must fit, % <input name="goal" type="number" min="1" max="99.9" step="any" required value=${goal}
        onInput=${(event) => setGoal(event.currentTarget.value)} /></label>
      <button class="main" disabled=${search.isRunning || Boolean(store.answer?.faults.length)}>Look for what would help</button>
      <${Stop} search=${search} at="/api/mend/stop" />
    </form>
    <${Progress} search=${search} />
    ${found && !search.isRunning ? html`<${Found} found=${found} mark=${mark} />` : null}
    ${found?.notHere.length ? html`<${NotHere} marks=${found.notHere} mark=${mark} />` : null}
  `;
}

function Found({ found, mark }) {
  if (!found.headline) {
    return html`<${Trouble} search=${found.search} />`;
  }
  return html`
    <section class="found" aria-label="What was found">
      <p class="quiet">Looked for in ${found.search.plan}, to fit in ${found.goal} of seasons.${otherPlan(found.search)}</p>
      <p class="headline" role="status">${found.headline}</p>
      ${found.cautions.map((each, at) => html`<p class="caution" key=${at}>${each}</p>`)}
      <${Points} title=${found.steps.length === 1 ? "Do this" : "Do this, in this order"} of="Steps" points=${found.steps} mark=${mark} />
      <${Points} title="One change alone" of="Singles" points=${found.singles} mark=${mark} />
      <${Points} title="Changes of the order itself, each alone: for whoever may promise less" of="OfTheOrder" points=${found.ofTheOrder} mark=${mark} />
      ${found.noHelp.length ? html`<h3>What would not help, and what is still in the way</h3>
        <ul>${found.noHelp.map((each, at) => html`<li key=${at}>${each}</li>`)}</ul>` : null}
      ${found.method ? html`<details><summary>How it was sought</summary><p>${found.method}</p></details>` : null}
    </section>
  `;
}

function Points({ title, of, points, mark }) {
  if (points.length === 0) {
    return null;
  }
  return html`
    <h3>${title}</h3>
    ${of === "Steps" ? html`<p class="quiet">As a try, a change plays as the files then would: dates that the plan works out are worked out anew, so its figures may differ a little from those here.</p>` : null}
    <ol class="points">${points.map((point, at) => html`<${Point} key=${at} point=${point} of=${of} at=${at} mark=${mark} />`)}</ol>
  `;
}

function Point({ point, of, at, mark }) {
  const take = of === "Steps" && at > 0 ? `Take 1 to ${at + 1} as a try` : "Take as a try";
  return html`<li class="point">
    <p><strong>${point.deed}</strong> ${point.gain}</p>
    <p class="terms">${point.terms}</p>
    ${point.parts.length ? html`<details><summary>Each of them</summary><ul>${point.parts.map((each, part) => html`<li key=${part}>${each}</li>`)}</ul></details>` : null}
    <p class="doings">
      <button type="button" aria-label=${`${take}: ${point.short}`}
        onClick=${() => act("/api/mend/take", { of, at }, `Taken as a try: ${at > 0 && of === "Steps" ? `changes 1 to ${at + 1}` : point.short}`)}>${take}</button>
      ${point.isMarked
        ? html`<span class="quiet">Marked as not here: the next search leaves it out.</span>`
        : html`<button type="button" aria-label=${`Not here: ${point.short}`} onClick=${() => mark(point.mark, false)}>Not here</button>`}
    </p>
  </li>`;
}

const NotHere = ({ marks, mark }) => html`
  <section aria-label="Not to be had here">
    <h3>Not to be had here</h3>
    <p class="quiet">The lines of not-here.txt in the folder. A search leaves these changes out.</p>
    <ul>${marks.map((each) => html`<li key=${each}>${each} <button type="button" aria-label=${`Take back: ${each}`} onClick=${() => mark(each, true)}>Take back</button></li>`)}</ul>
  </section>
`;
