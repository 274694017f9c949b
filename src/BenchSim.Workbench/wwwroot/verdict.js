// The answer, always in sight: the sentence, the share of seasons with its interval, the difference from the files.
import { html, useEffect } from "./view.js";
import { mark, set, store } from "./store.js";

const whole = (number) => number.toLocaleString("en-US");

export function Verdict() {
  const { answer, desk, last } = store;
  const shown = answer?.faults.length ? last : answer;
  const fits = shown?.said?.fits;
  useEffect(() => {
    if (answer) {
      mark("painted", { revision: answer.revision, seasons: answer.seasons, isLive: answer.isLive });
    }
  }, [answer]);
  const state = answer?.faults.length ? "faults" : fits === true ? "fits" : fits === false ? "misses" : "unsure";
  return html`
    <section class=${"verdict " + state} aria-label="Verdict" data-seasons=${answer?.seasons ?? 0} data-revision=${answer?.revision ?? 0}
      data-live=${answer?.isLive ? "yes" : "no"}>
      <h1>${shown?.name ?? desk.folder}</h1>
      ${answer?.failure ? html`<p class="trouble" role="alert">${answer.failure}</p>` : null}
      ${answer?.faults.length ? html`<${Faults} faults=${answer.faults} />` : null}
      ${shown?.said
        ? html`
            <div class=${answer.faults.length ? "stale" : ""}>
              ${answer.faults.length ? html`<p class="quiet">The answer from before these faults:</p>` : null}
              <p class="headline"><span class="mark" aria-hidden="true">${MARKS[state]}</span> ${shown.said.headline}</p>
              <${Gauge} fits=${shown.fits} base=${shown.base} reliable=${shown.reliable} />
              <p class="share">Fits in ${shown.fits.words}${shown.isLast ? "" : html`<span class="quiet">; more are played</span>`}</p>
              ${shown.said.weak && !desk.isPhone ? html`<p class="quiet unmeasured">${shown.said.weak} <button type="button" class="link" onClick=${() => set({ part: "trust" })}>How sure is it?</button></p>` : null}
              ${shown.underway ? html`<p class="quiet">${shown.underway}</p>` : null}
              ${shown.difference ? html`<p class="difference">${shown.difference}</p>` : null}
              <details class="more">
                <summary>All that the seasons say</summary>
                <ul>${shown.said.sentences.map((each, at) => html`<li key=${at}>${each}</li>`)}</ul>
                ${shown.warnings.length ? html`<h2>Worth a look in the files</h2><ul>${shown.warnings.map((each, at) => html`<li key=${at}>${place(each)}: ${each.what}; ${each.instead}</li>`)}</ul>` : null}
                ${shown.said.leavesOut.length ? html`<h2>What these figures leave out</h2><ul>${shown.said.leavesOut.map((each, at) => html`<li key=${at}>${each}</li>`)}</ul>` : null}
              </details>
            </div>
          `
        : answer ? null : html`<p>Playing the first seasons …</p>`}
      <p class="spoken" role="status">${answer && !answer.isLive && answer.isLast && shown?.said ? spoken(answer, shown) : ""}</p>
      <p class=${"message" + (store.isTrouble || store.isLost ? " trouble" : "")} role=${store.isTrouble ? "alert" : "status"}>
        ${store.isLost ? "The workbench does not answer. Is it still open in its terminal? What you changed so far is kept." : store.message}
      </p>
    </section>
  `;
}

const MARKS = { fits: "✔", misses: "✖", unsure: "?", faults: "!" };

const spoken = (answer, shown) =>
  answer.faults.length
    ? `${answer.faults.length} ${answer.faults.length === 1 ? "fault" : "faults"} to mend.`
    : `Fits in ${shown.fits.words}. ${shown.difference ?? ""}`;

// Drawn in percent of the width, so that nothing in it is scaled.
function Gauge({ fits, base, reliable }) {
  const at = (share) => `${share * 100}%`;
  const words = `Fits in ${fits.words}; the mark at ${reliable.words} is where a plan is called reliable.`;
  return html`<svg class="gauge" role="img" aria-label=${words} width="100%" height="22">
    <rect class="rail" x="0" y="6" width="100%" height="10" />
    <rect class="done" x="0" y="6" width=${at(fits.share)} height="10" />
    ${base ? html`<line class="base" x1=${at(base.share)} x2=${at(base.share)} y1="1" y2="21" />` : null}
    <rect class="range" x=${at(fits.low)} y="3" width=${at(Math.max(fits.high - fits.low, 0.002))} height="16" />
    <line class="goal" x1=${at(reliable.share)} x2=${at(reliable.share)} y1="0" y2="22" />
  </svg>`;
}

function Faults({ faults }) {
  return html`
    <div class="faults">
      <p class="headline"><span class="mark" aria-hidden="true">!</span> ${whole(faults.length)} ${faults.length === 1 ? "fault" : "faults"} to mend before there is an answer.</p>
      <ol>
        ${faults.slice(0, 20).map(
          (fault, at) => html`<li key=${at}>
            ${store.desk.isPhone ? place(fault) : html`<button type="button" class="link" onClick=${() => goTo(fault)}>${place(fault)}</button>`}: ${fault.what}; ${fault.instead}
          </li>`,
        )}
      </ol>
      ${faults.length > 20 ? html`<p>… and ${whole(faults.length - 20)} more.</p>` : null}
    </div>
  `;
}

const place = (fault) =>
  fault.row !== null ? `Plan, line ${fault.row + 1}${fault.cell ? ", " + fault.cell : ""}`
  : fault.section ? `${fault.section}${fault.key ? ", " + fault.key : ""}`
  : fault.file;

function goTo(fault) {
  const part = fault.file.startsWith("plan.") ? "plan" : fault.section ? "rules" : store.part;
  set({ part, focus: { ...fault } });
}
