// Heater, fans and vents of the houses, in the words of "check --all". They move with every change of a house.
import { html } from "./view.js";
import { store } from "./store.js";

export function Air() {
  const hasFaults = store.answer?.faults.length > 0;
  const air = (hasFaults ? store.last : store.answer)?.air;
  if (!air) {
    return null;
  }
  const short = air.houses.filter((each) => each.isShort).length;
  return html`
    <details class="section">
      <summary>${air.title}${short ? html` <span class="flag">${short === 1 ? "a heater is" : `${short} heaters are`} too small</span>` : null}</summary>
      <div class=${"air" + (hasFaults ? " stale" : "")}>
        ${hasFaults ? html`<p class="quiet">As it was before the faults above:</p>` : null}
        ${air.houses.map((house, at) => html`<${House} key=${at} house=${house} />`)}
        ${air.notes.map((note) => html`<p key=${note} class=${note.startsWith("Caution") ? "caution" : null}>${note}</p>`)}
      </div>
    </details>
  `;
}

const House = ({ house }) => html`
  <h3>${house.name}</h3>
  <dl>${house.terms.map(({ term, words }) => html`<div key=${term}><dt>${term}</dt><dd>${words}</dd></div>`)}</dl>
  <table>
    <thead><tr><th scope="col">Fans and vents of ${house.name}</th><th scope="col">by rules of thumb</th><th scope="col">the rule</th></tr></thead>
    <tbody>${house.sizes.map(({ what, size, trust }) => html`<tr key=${what}><th scope="row">${what}</th><td>${size}</td><td>${trust}</td></tr>`)}</tbody>
  </table>
`;
