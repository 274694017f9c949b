// How sure the answer is where the values under it may be wrong: the search of benchsim trust on the plan that is looked at.
import { html, useEffect, useState } from "./view.js";
import { act, get, set, store } from "./store.js";
import { otherPlan, Progress, searching, Stop, Trouble } from "./search.js";

export function Trust() {
  const [found, setFound] = useState(null);
  useEffect(() => {
    let isWanted = true;
    get("/api/trust").then((each) => isWanted && each && setFound(each));
    return () => {
      isWanted = false;
    };
  }, [store.trust?.isRunning, store.opens, store.desk.revision]);
  const search = searching(store.trust, found?.search);
  const start = () => {
    set({ trust: { isRunning: true, done: 0 } });
    act("/api/trust/start", {}).then((isDone) => isDone || set({ trust: null }));
  };
  return html`
    <h2>How sure it is</h2>
    <p>The share of seasons counts luck alone. Days of growth, losses and the figures of houses may be wrong too. This plays the plan with many
      sets of values, and says how far the answer moves and what to measure first. It takes a minute or two and runs beside the page.</p>
    <p class="doings">
      <button type="button" class="main" disabled=${search.isRunning || Boolean(store.answer?.faults.length)} onClick=${start}>Look how sure it is</button>
      <${Stop} search=${search} at="/api/trust/stop" />
    </p>
    <${Progress} search=${search} />
    ${found && !search.isRunning ? html`<${Found} search=${found.search} found=${found.found} />` : null}
  `;
}

function Found({ search, found }) {
  if (!found) {
    return html`<${Trouble} search=${search} />`;
  }
  return html`
    <section class="found" aria-label="What was found">
      <p class="quiet">Of ${search.plan}.${otherPlan(search)}</p>
      <p class="headline" role="status">${found.headline}</p>
      <ul>${found.facts.map((each, at) => html`<li key=${at}>${each}</li>`)}</ul>
      ${found.rows.length ? html`
        <div class="scroll" tabindex="0" role="region" aria-label="Values that move the answer">
          <table class="figures">
            <thead><tr>${found.columns.map((each) => html`<th key=${each} scope="col">${each}</th>`)}</tr></thead>
            <tbody>${found.rows.map(([name, ...cells]) => html`<tr key=${name}><th scope="row">${name}</th>${cells.map((each, at) => html`<td key=${at}>${each}</td>`)}</tr>`)}</tbody>
          </table>
        </div>` : null}
      ${found.played ? html`<details><summary>How it was found</summary><p>${found.played}</p></details>` : null}
    </section>
  `;
}
