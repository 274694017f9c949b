// An answer as the terminal has it: what is read first, its table, and all of it on demand (Showing/ToldDocument.cs).
import { html } from "./view.js";

/**
 * @param {{told: object, title: string, command: string}} props The answer, what its table shows, and the command that prints the same.
 */
export function Told({ told, title, command }) {
  if (told.note) {
    return html`<p class="flag">${told.note}</p>`;
  }
  return html`
    <p class="headline" role="status">${told.headline}</p>
    ${told.facts.length ? html`<ul class="said">${told.facts.map((each, at) => html`<li key=${at}>${each}</li>`)}</ul>` : null}
    ${told.warnings.map((each, at) => html`<p class="caution" key=${at}>${each}</p>`)}
    ${told.table ? html`<${Shown} table=${told.table} title=${title} />` : null}
    ${told.footnote ? html`<p class="help">${told.footnote}</p>` : null}
    <details class="all">
      <summary>All of it, as ${command} prints it</summary>
      ${told.all.map((each, at) => html`<${Passage} key=${at} passage=${each} title=${title} />`)}
    </details>
  `;
}

const Passage = ({ passage, title }) =>
  passage.kind === "heading" ? html`<h4>${passage.text}</h4>`
  : passage.kind === "table" ? html`<${Shown} table=${passage.table} title=${title} />`
  : html`<p class=${passage.kind === "warning" ? "caution" : passage.kind === "point" ? "dot-before" : null}>${passage.text}</p>`;

// What is too wide is moved in its frame, by the keys too.
const Shown = ({ table, title }) => html`<div class="scroll told" tabindex="0" role="group" aria-label=${title}>
  <table class="grid">
    <thead><tr>${table.columns.map((each, at) => html`<th scope="col" key=${at} class=${each.isNumbers ? "number" : null}>${each.name || html`<span class="spoken">remark</span>`}</th>`)}</tr></thead>
    <tbody>${table.rows.map((row, at) => html`<tr key=${at}>
      ${row.map((cell, column) => html`<td key=${column} class=${table.columns[column].isNumbers ? "number" : null}>${cell}</td>`)}</tr>`)}</tbody>
  </table>
</div>`;
