// Before the season the bills and what is agreed on; once there is a log, what it teaches and how the season went.
import { html, useEffect, useState } from "./view.js";
import { act, get, store } from "./store.js";
import { Told } from "./told.js";

export function Agree() {
  const [state, setState] = useState(null);
  const [agreed, setAgreed] = useState(0);
  useEffect(() => {
    const wanted = new AbortController();
    get("/api/agreed", wanted.signal).then((found) => !wanted.signal.aborted && found && setState(found));
    return () => wanted.abort();
  }, [store.desk.revision, agreed]);
  if (!state) {
    return html`<p class="wait">Looking at what was agreed …</p>`;
  }
  const isTry = store.desk.current !== 0;
  return html`
    <h2>Agree and review</h2>
    ${isTry ? html`<p class="help">All of this is of the files, not of the try you look at. Put the try into the files first.</p>` : null}
    ${state.note ? html`<p class="flag">${state.note}</p>` : null}
    <section class="agreeing" aria-labelledby="bills">
      <h3 id="bills">The plan and the bill</h3>
      <p>${state.since ?? "Nothing is agreed on yet. Growers who share houses and mats look at the three rules for the bill, and keep the plan and the rule that they choose."}</p>
      <${Asked} path="/api/bills" button="Show the bills by the three rules" title="What falls to each grower" command="benchsim agree --all" />
      <${Choose} state=${state} done=${() => setAgreed(agreed + 1)} />
    </section>
    <section class="agreeing" aria-labelledby="teaches">
      <h3 id="teaches">What the log teaches</h3>
      ${state.hasLog ? null : html`<p class="quiet">There are no lines in log.csv yet. Write them under Today.</p>`}
      <${Asked} path="/api/learn" button="Ask the log" title="What the log teaches" command="benchsim learn --all" disabled=${!state.hasLog} then=${Taught} />
    </section>
    <section class="agreeing" aria-labelledby="review">
      <h3 id="review">How the season went</h3>
      <p class="help">The log beside the plan that was agreed. Before the season is over it is about the days up to the last line.</p>
      <${Asked} path="/api/review" button="Review the season" title="How the season went" command="benchsim review --all" disabled=${!state.hasLog} />
    </section>
  `;
}

// What takes seconds is asked for by hand. It is of the files as they were: another state of them asks again.
function Asked({ path, button, title, command, disabled, then: Then }) {
  const [asking, setAsking] = useState(null);
  const [told, setTold] = useState(null);
  const { revision } = store.desk;
  useEffect(() => () => asking?.abort(), [asking]);
  const ask = async () => {
    const wanted = new AbortController();
    setAsking(wanted);
    const found = await get(path, wanted.signal);
    if (!wanted.signal.aborted) {
      setAsking(null);
      setTold(found ? { ...found, revision } : null);
    }
  };
  return html`
    <p class="doings"><button type="button" disabled=${disabled || Boolean(asking)} onClick=${ask}>${button}</button></p>
    <div role="status">${asking ? html`<p class="quiet">Playing seasons …</p>` : null}</div>
    ${told && !asking
      ? html`${told.revision === revision ? null : html`<p class="quiet">Of the files as they were when you asked.</p>`}
          <${Told} told=${told} title=${title} command=${command} />
          ${Then && !told.note ? html`<${Then} told=${told} />` : null}`
      : null}
  `;
}

function Choose({ state, done }) {
  const [day, setDay] = useState(state.today);
  const [isMeant, setMeant] = useState(false);
  const isThere = state.days.includes(day);
  const agree = async (event) => {
    event.preventDefault();
    const bill = String(new FormData(event.currentTarget).get("bill"));
    if (await act("/api/agree", { bill, on: day, replace: isThere && isMeant })) {
      setMeant(false);
      done();
    }
  };
  return html`<form class="add" onSubmit=${agree}>
    <fieldset class="rules">
      <legend>The bill is</legend>
      ${state.rules.map(({ rule, words }) => html`<label key=${rule}>
        <input type="radio" name="bill" value=${rule} required defaultChecked=${rule === state.rule} /> ${words} <span class="quiet">(${rule})</span></label>`)}
    </fieldset>
    <label>Agreed on <input type="date" required value=${day} onInput=${(event) => setDay(event.currentTarget.value)} /></label>
    ${isThere ? html`<label class="check"><span><input type="checkbox" required checked=${isMeant} onChange=${(event) => setMeant(event.currentTarget.checked)} />
      in the place of what was agreed that day</span></label>` : null}
    <button class="main" disabled=${Boolean(state.cannot || state.note)}>Agree to this plan and rule</button>
    ${state.cannot ? html`<p class="flag">${state.cannot}</p>` : null}
  </form>`;
}

function Taught({ told: { taught } }) {
  if (taught.cannot) {
    return html`<p class="flag">${taught.cannot}</p>`;
  }
  if (taught.lines.length === 0) {
    return taught.isThere ? html`<p>crops.csv holds these values already.</p>` : null;
  }
  return html`
    <details class="all">
      <summary>The lines of crops.csv that change</summary>
      <ul class="lines">${taught.lines.map((each, at) => html`<li key=${at}>
        ${each.before ? html`<del><span class="spoken">before: </span>${each.before}</del>` : null}
        ${each.after ? html`<ins><span class="spoken">after: </span>${each.after}</ins>` : null}</li>`)}</ul>
    </details>
    <p class="doings"><button type="button" class="main" onClick=${() => act("/api/learn/take", {}, "Taken as a try: put it into the files to keep it")}>Put the values into crops.csv as a try</button></p>
    <p class="help">The answer above then moves with them. Undo takes them back; “Put into the files” writes crops.csv as benchsim learn --write does.</p>
  `;
}
